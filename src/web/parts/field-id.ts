// Ids of form fields in the page, so that a problem can lead to its field. Leaves out labels.

export function fieldDomId(field: string): string {
  return `field-${field.replaceAll('.', '-')}`
}

const CONTROLS = ['input', 'select', 'button'].join(',')

/** Moves to the field and into its control. */
export function goToField(field: string): void {
  const found = document.getElementById(fieldDomId(field))
  const control = found?.matches(CONTROLS) === true ? found : found?.querySelector(CONTROLS)
  if (!(control instanceof HTMLElement)) return
  control.scrollIntoView({ block: 'center' })
  control.focus()
}
