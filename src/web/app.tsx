// The frame of every page: name, look, footer. Leaves out the pages.
import { PAGE_WORDS } from '../words/web-page-text.ts'
import { BedsidePage } from './pages/bedside-page.tsx'
import { LookSwitch } from './parts/look-switch.tsx'

export function App() {
  return (
    <>
      <a className="skip" href="#answer">
        {PAGE_WORDS.skip}
      </a>
      <header className="header">
        <p className="name">
          <strong>{PAGE_WORDS.name}</strong> <span>{PAGE_WORDS.tagline}</span>
        </p>
        <LookSwitch />
      </header>
      <BedsidePage />
      <footer className="footer">{PAGE_WORDS.footer}</footer>
    </>
  )
}
