// Named values side by side, as a list a reader can walk. Leaves out what they mean.

export interface Fact {
  readonly name: string
  readonly value: string
}

export function Facts({ facts }: { readonly facts: readonly Fact[] }) {
  return (
    <dl className="facts">
      {facts.map(({ name, value }) => (
        <div key={name} className="fact">
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  )
}
