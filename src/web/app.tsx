// The frame of every page: name, places, look, footer. Leaves out the pages.
import { lazy, Suspense } from 'react'
import { Link, Route, Switch, useLocation } from 'wouter'
import { CHOOSABLE_QUANTITIES } from '../units/choosable.ts'
import { PAGE_WORDS } from '../words/web-page-text.ts'
import { FarSwitch } from './parts/far-switch.tsx'
import { LookSwitch } from './parts/look-switch.tsx'
import { PLACES, SETTINGS_PATH } from './places.tsx'
import type { Place } from './places.tsx'
import { useSettings } from './settings/settings-store.ts'

/** What keeps the page on the device holds nothing up. */
const UpdateBar = lazy(async () => ({
  default: (await import('./offline/update-bar.tsx')).UpdateBar,
}))

export function App() {
  const [path] = useLocation()
  const { units } = useSettings()
  // Texts hold units, so a place is drawn anew when another tab chooses others; Settings, where they are chosen, stays.
  const drawn = path === SETTINGS_PATH ? path : CHOOSABLE_QUANTITIES.map((one) => units[one]).join()
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
        <div className="switches">
          {path === '/' ? <FarSwitch /> : null}
          <LookSwitch />
        </div>
      </header>
      <Suspense fallback={<p className="place-loading">{PAGE_WORDS.opening}</p>}>
        <Switch key={drawn}>
          {PLACES.map(({ path: at, Page, hasParts }) => (
            <Route key={at} path={hasParts === true ? `${at}/*?` : at} component={Page} />
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
      <Suspense fallback={null}>
        <UpdateBar />
      </Suspense>
    </>
  )
}

function PlaceMenu() {
  const [path] = useLocation()
  return (
    <nav className="places" aria-label={PAGE_WORDS.places}>
      {PLACES.filter(({ isOutOfMenu }) => isOutOfMenu !== true).map((place) => (
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
