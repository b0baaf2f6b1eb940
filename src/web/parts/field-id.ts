// Ids of form fields in the page, so that a problem can lead to its field. Leaves out labels.

export function fieldDomId(field: string): string {
  return `field-${field.replaceAll('.', '-')}`
}

/** Moves to the field and into its control. */
export function goToField(field: string): void {
  const found = document.getElementById(fieldDomId(field))
  const control =
    found?.matches('input, select') === true ? found : found?.querySelector('input, select, button')
  if (!(control instanceof HTMLElement)) return
  control.scrollIntoView({ block: 'center' })
  control.focus()
}
