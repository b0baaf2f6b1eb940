// Chain: build one from the shelf, or find what is wrong with ten. Leaves out both parts themselves.
import { Link, useLocation } from 'wouter'
import { CHAIN_PAGE } from '../../words/chain-page-text.ts'
import { BuildPart } from './build-part.tsx'
import { PracticePart } from './practice-part.tsx'
import '../styles/chain.css'

export function ChainPage() {
  const [path] = useLocation()
  const isPractice = path === PRACTICE_PATH
  return (
    <main className="chain wide-place" id="answer" tabIndex={-1}>
      <div className="chain-top">
        <h1>{CHAIN_PAGE.heading()}</h1>
        <nav className="places" aria-label={CHAIN_PAGE.parts()}>
          <Link href="/chain" className="place" aria-current={isPractice ? undefined : 'page'}>
            {CHAIN_PAGE.build()}
          </Link>
          <Link
            href={PRACTICE_PATH}
            className="place"
            aria-current={isPractice ? 'page' : undefined}
          >
            {CHAIN_PAGE.practice()}
          </Link>
        </nav>
      </div>
      {isPractice ? <PracticePart /> : <BuildPart />}
    </main>
  )
}

const PRACTICE_PATH = '/chain/practice'
