// A list of lines of text. Leaves out what they say.

export function Lines({ lines }: { readonly lines: readonly string[] }) {
  return (
    <ul className="lines">
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  )
}
