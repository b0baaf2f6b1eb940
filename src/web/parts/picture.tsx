// A picture written as SVG text, drawn at the width there is. Leaves out what it shows.
import { useEffect, useRef, useState } from 'react'

export interface PictureProps {
  /** The SVG for a width; our own text, with everything from outside escaped by src/pictures. */
  readonly draw: (widthPx: number) => string
}

const WIDTH_MOST_PX = 860
const WIDTH_LEAST_PX = 260

export function Picture({ draw }: PictureProps) {
  const box = useRef<HTMLDivElement>(null)
  const [widthPx, setWidthPx] = useState<number | null>(null)
  useEffect(() => {
    const element = box.current
    if (element === null) return
    const observer = new ResizeObserver(([entry]) => {
      if (entry === undefined) return
      const width = Math.floor(entry.contentRect.width)
      setWidthPx(Math.min(WIDTH_MOST_PX, Math.max(WIDTH_LEAST_PX, width)))
    })
    observer.observe(element)
    return () => observer.disconnect()
  }, [])
  return (
    <div
      ref={box}
      className="picture"
      // The pictures escape every text they are given (src/pictures/svg.ts), so this holds no foreign markup.
      dangerouslySetInnerHTML={{ __html: widthPx === null ? '' : draw(widthPx) }}
    />
  )
}
