// A named group of fields. Leaves out the fields.
import type { ReactNode } from 'react'

export function Group(props: { readonly heading: string; readonly children: ReactNode }) {
  return (
    <fieldset className="group">
      <legend>{props.heading}</legend>
      <div className="group-fields">{props.children}</div>
    </fieldset>
  )
}
