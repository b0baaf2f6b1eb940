// Starts the page. Leaves out everything it shows.
import { createRoot } from 'react-dom/client'
import { assert } from '../errors.ts'
import { PAGE_WORDS } from '../words/web-page-text.ts'
import { App } from './app.tsx'
import { followSettings } from './settings/follow-settings.ts'
import './styles/tokens.css'
import './styles/page.css'
import './styles/places.css'
import './styles/print.css'

const root = document.getElementById('root')
assert(root !== null, 'web/root in page')
followSettings()
document.title = PAGE_WORDS.documentTitle
createRoot(root).render(<App />)
