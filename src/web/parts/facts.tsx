// Named values side by side, as a list a reader can walk. Leaves out what they mean.

export interface Fact {
  readonly name: string
  readonly value: string
  /** A sentence rather than a number: takes a row of its own. */
  readonly isWide?: boolean
}

export function Facts({ facts }: { readonly facts: readonly Fact[] }) {
  return (
    <dl className="facts">
      {facts.map(({ name, value, isWide }) => (
        <div key={name} className={isWide === true ? 'fact fact-wide' : 'fact'}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  )
}
