// Hands a text to the browser as a file to keep. Leaves out what stands in it.

export interface SavedFile {
  readonly name: string
  readonly type: string
  readonly text: string
}

export function saveFile({ name, type, text }: SavedFile): void {
  const address = URL.createObjectURL(new Blob([text], { type }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  URL.revokeObjectURL(address)
}
