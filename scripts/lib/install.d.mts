// Types of install.mjs for the tests.
export function findChromium(): string | undefined
export function ensurePackages(): Promise<void>
export function ensureChromium(): Promise<string>
