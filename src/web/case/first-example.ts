// The example shown to whoever opens the page for the first time. Leaves out the others, which are loaded when the page stands.
import parsed from '../../../examples/nasal-cannula.json'
import { exampleOf } from './example.ts'

export const FIRST_EXAMPLE = exampleOf('nasal-cannula', parsed)
