// Draws the page for the first time, in the language already spoken. Leaves out everything it shows. Styles for paper come last.
import { createRoot } from 'react-dom/client'
import { assert } from '../errors.ts'
import type { Language } from '../words/languages.ts'
import { PAGE_WORDS } from '../words/web-page-text.ts'
import { App } from './app.tsx'
import { followSettings } from './settings/follow-settings.ts'
import { followLanguage } from './settings/language.ts'
import './styles/print.css'

export function startPage(language: Language): void {
  const root = document.getElementById('root')
  assert(root !== null, 'web/root in page')
  followSettings()
  followLanguage(language)
  document.title = PAGE_WORDS.documentTitle
  createRoot(root).render(<App />)
}
