// What is typed in one part of Gas, kept in this browser as typed: texts of the part and of its rows. Leaves out judging.
import { useEffect, useState } from 'react'

export type Texts = Readonly<Record<string, string>>

export interface KeptForm {
  readonly texts: Texts
  readonly rows: readonly Texts[]
}

export interface FormStore {
  readonly form: KeptForm
  readonly change: (form: KeptForm) => void
}

/** The form of this name as it was left, else as it starts. */
export function useKeptForm(name: string, start: KeptForm): FormStore {
  const key = `oxwright.gas.${name}.1`
  const [form, change] = useState<KeptForm>(() => keptForm(key) ?? start)
  useEffect(() => {
    try {
      localStorage.setItem(key, JSON.stringify(form))
    } catch {
      // Blocked storage: what is typed lasts until the page is left.
    }
  }, [key, form])
  return { form, change }
}

function keptForm(key: string): KeptForm | undefined {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? 'null')
    return isForm(kept) ? kept : undefined
  } catch {
    // Blocked storage or a broken entry: the part starts without it.
    return undefined
  }
}

function isForm(kept: unknown): kept is KeptForm {
  if (typeof kept !== 'object' || kept === null) return false
  const { texts, rows } = kept as Partial<Record<keyof KeptForm, unknown>>
  return isTexts(texts) && Array.isArray(rows) && rows.every(isTexts)
}

function isTexts(kept: unknown): kept is Texts {
  return (
    typeof kept === 'object' &&
    kept !== null &&
    Object.values(kept).every((text) => typeof text === 'string')
  )
}

export function withRow(form: KeptForm, at: number, row: Texts): KeptForm {
  return { ...form, rows: form.rows.map((one, i) => (i === at ? row : one)) }
}

export function withoutRow(form: KeptForm, at: number): KeptForm {
  return { ...form, rows: form.rows.filter((_, i) => i !== at) }
}

/** The row one place up or down; at the end it stays. */
export function withMovedRow(form: KeptForm, at: number, by: -1 | 1): KeptForm {
  const row = form.rows[at]
  const other = form.rows[at + by]
  if (row === undefined || other === undefined) return form
  return {
    ...form,
    rows: form.rows.map((one, i) => (i === at ? other : i === at + by ? row : one)),
  }
}
