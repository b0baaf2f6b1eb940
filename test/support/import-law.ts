// The import law as data: which layer of src/ may import which, and which packages. Leaves out how imports are found.

export interface LayerLaw {
  /** Other layers this one may import; its own is always allowed. */
  readonly layers: readonly Layer[]
  /** Packages it may import; `node:*` stands for all of Node's own modules. */
  readonly packages: readonly string[]
}

export const LAYERS = [
  'errors',
  'units',
  'physics',
  'physiology',
  'kit',
  'joining',
  'humidity',
  'patient',
  'delivery',
  'inference',
  'planning',
  'supply',
  'evidence',
  'sheet',
  'index',
  'words',
  'pictures',
  'files',
  'cli',
  'web',
] as const

export type Layer = (typeof LAYERS)[number]

const PHYSICS = ['errors', 'units', 'physics'] as const
const DELIVERY = [...PHYSICS, 'physiology', 'kit', 'delivery'] as const
const INFERENCE = [...DELIVERY, 'patient', 'inference'] as const
const KIT = [...PHYSICS, 'kit', 'joining', 'humidity'] as const
const PLANNING = [...INFERENCE, 'joining', 'humidity', 'planning'] as const
const CORE = [...PLANNING, 'supply', 'evidence', 'sheet'] as const

export const IMPORT_LAW: Readonly<Record<Layer, LayerLaw>> = {
  errors: { layers: [], packages: [] },
  units: { layers: ['errors'], packages: [] },
  physics: { layers: ['errors', 'units'], packages: [] },
  physiology: { layers: PHYSICS, packages: [] },
  kit: { layers: PHYSICS, packages: [] },
  joining: { layers: [...PHYSICS, 'physiology', 'kit'], packages: [] },
  humidity: { layers: KIT, packages: [] },
  patient: { layers: [...PHYSICS, 'physiology', 'kit'], packages: [] },
  delivery: { layers: [...PHYSICS, 'physiology', 'kit'], packages: [] },
  inference: { layers: [...DELIVERY, 'patient'], packages: [] },
  planning: { layers: [...INFERENCE, 'joining', 'humidity'], packages: [] },
  supply: { layers: PLANNING, packages: [] },
  evidence: { layers: [...PLANNING, 'supply'], packages: [] },
  sheet: { layers: [...PLANNING, 'supply'], packages: [] },
  index: { layers: CORE, packages: [] },
  words: { layers: CORE, packages: ['@lingui/core', '@lingui/message-utils'] },
  pictures: { layers: [...CORE, 'words'], packages: ['d3-array', 'd3-scale', 'd3-shape'] },
  files: {
    layers: [...CORE, 'words', 'pictures'],
    packages: ['papaparse', 'pdfmake', 'qrcode'],
  },
  cli: { layers: [...CORE, 'words', 'pictures', 'files'], packages: ['node:*', 'yaml'] },
  web: {
    layers: [...CORE, 'words', 'pictures', 'files'],
    packages: [
      'react',
      'react-dom',
      'react-aria-components',
      'comlink',
      'wouter',
      'workbox-window',
      'yaml',
    ],
  },
}

/** Layers without clock, random source, timer, environment or network. */
export const PURE_LAYERS: readonly Layer[] = [...CORE, 'index', 'words', 'pictures']

/** Free names that would make a pure layer depend on something other than its arguments. */
export const IMPURE_NAMES: readonly string[] = [
  'Date',
  'performance',
  'setTimeout',
  'setInterval',
  'setImmediate',
  'queueMicrotask',
  'process',
  'fetch',
  'crypto',
  'globalThis',
  'eval',
  'require',
]

/** Files that nobody imports because something outside starts them. */
export const ENTRY_POINTS: readonly string[] = ['src/index.ts', 'src/cli/main.ts']

/** The layer a path of src/ belongs to, or undefined when it stands in none. */
export function layerOf(path: string): Layer | undefined {
  const [, part = ''] = /^src\/([^/]+?)(?:(?:\.test)?\.ts)?(?:\/.*)?$/.exec(path) ?? []
  return LAYERS.find((layer) => layer === part)
}
