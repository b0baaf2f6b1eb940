// Types of build.mjs for the tests.
export type Part = 'library' | 'types' | 'cli' | 'web'
export function build(
  names?: readonly Part[],
  options?: { readonly say?: (line: string) => void },
): Promise<void>
