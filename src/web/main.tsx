// Speaks the language chosen, then starts the page. Leaves out everything it shows. Styles of all places come first, those of one place after them.
import './styles/tokens.css'
import './styles/page.css'
import './styles/places.css'
import { speakLanguage } from '../words/languages.ts'
import { languageNow } from './settings/language.ts'

const language = languageNow()
await speakLanguage(language)
// Only now: texts are said while these modules load.
const { startPage } = await import('./start-page.tsx')
startPage(language)
