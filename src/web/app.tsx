// The frame of every page: name, places, look, footer. Leaves out the pages.
import { Suspense } from 'react'
import { Link, Route, Switch, useLocation } from 'wouter'
import { PAGE_WORDS } from '../words/web-page-text.ts'
import { LookSwitch } from './parts/look-switch.tsx'
import { PLACES } from './places.tsx'
import type { Place } from './places.tsx'

export function App() {
  const [path] = useLocation()
  return (
    <>
      <a className="skip" href="#answer">
        {path === '/' ? PAGE_WORDS.skip : PAGE_WORDS.skipToPlace}
      </a>
      <header className="header">
        <p className="name">
          <strong>{PAGE_WORDS.name}</strong> <span>{PAGE_WORDS.tagline}</span>
        </p>
        <PlaceMenu />
        <LookSwitch />
      </header>
      <Suspense fallback={<p className="place-loading">{PAGE_WORDS.opening}</p>}>
        <Switch>
          {PLACES.map(({ path, Page, hasParts }) => (
            <Route key={path} path={hasParts === true ? `${path}/*?` : path} component={Page} />
          ))}
          <Route>
            <main className="no-place">
              <h1>{PAGE_WORDS.noPlace}</h1>
              <Link href="/">{PAGE_WORDS.toBedside}</Link>
            </main>
          </Route>
        </Switch>
      </Suspense>
      <footer className="footer">{PAGE_WORDS.footer}</footer>
    </>
  )
}

function PlaceMenu() {
  const [path] = useLocation()
  return (
    <nav className="places" aria-label={PAGE_WORDS.places}>
      {PLACES.map((place) => (
        <Link
          key={place.path}
          href={place.path}
          className="place"
          aria-current={isAt(place, path) ? 'page' : undefined}
        >
          {place.name}
        </Link>
      ))}
    </nav>
  )
}

function isAt(place: Place, path: string): boolean {
  return path === place.path || (place.hasParts === true && path.startsWith(`${place.path}/`))
}
