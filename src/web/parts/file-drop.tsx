// A place to drop a file, and the button that chooses one. Leaves out what is done with it.
import { useState } from 'react'
import type { ReactNode } from 'react'

interface TakesFile {
  readonly onFile: (file: File) => void
}

export function FileDrop(props: TakesFile & { readonly children: (isOver: boolean) => ReactNode }) {
  const [isOver, setOver] = useState(false)
  return (
    <div
      className="file-drop"
      data-over={isOver}
      onDragOver={(event) => {
        event.preventDefault()
        setOver(true)
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault()
        setOver(false)
        const [file] = event.dataTransfer.files
        if (file !== undefined) props.onFile(file)
      }}
    >
      {props.children(isOver)}
    </div>
  )
}

export function FileOpen(props: TakesFile & { readonly label: string; readonly accept: string }) {
  return (
    <label className="button file-open">
      {props.label}
      <input
        type="file"
        className="unseen"
        accept={props.accept}
        onChange={(event) => {
          const [file] = event.target.files ?? []
          if (file !== undefined) props.onFile(file)
          // The same file may be chosen again after it was mended.
          event.target.value = ''
        }}
      />
    </label>
  )
}
