// The example cases once they are loaded; until then the first alone. Leaves out what they hold.
import { useEffect, useState } from 'react'
import type { Example } from './example.ts'
import { FIRST_EXAMPLE } from './first-example.ts'

const FIRST_ALONE: readonly Example[] = [FIRST_EXAMPLE]

export function useExamples(): readonly Example[] {
  const [examples, setExamples] = useState(FIRST_ALONE)
  useEffect(() => {
    const load = async (): Promise<void> => {
      const { EXAMPLES } = await import('./examples.ts')
      setExamples(EXAMPLES)
    }
    // A lost server leaves the first example and one's own case.
    load().catch(() => undefined)
  }, [])
  return examples
}
