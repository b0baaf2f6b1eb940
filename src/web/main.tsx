// Starts the page. Leaves out everything it shows. Styles of all places come first, those of one place after them, paper last.
import './styles/tokens.css'
import './styles/page.css'
import './styles/places.css'
import { createRoot } from 'react-dom/client'
import { assert } from '../errors.ts'
import { PAGE_WORDS } from '../words/web-page-text.ts'
import { App } from './app.tsx'
import { followSettings } from './settings/follow-settings.ts'
import './styles/print.css'

const root = document.getElementById('root')
assert(root !== null, 'web/root in page')
followSettings()
document.title = PAGE_WORDS.documentTitle
createRoot(root).render(<App />)
