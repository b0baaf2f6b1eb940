// In place of a sheet: why there is none, and the way on. Leaves out finding that out.
import { Link } from 'wouter'
import { PAGE_WORDS } from '../../words/web-page-text.ts'

export function Instead({ said }: { readonly said: readonly string[] }) {
  return (
    <div className="sheet-instead">
      {said.map((line) => (
        <p key={line}>{line}</p>
      ))}
      <Link className="button" href="/">
        {PAGE_WORDS.toBedside}
      </Link>
    </div>
  )
}
