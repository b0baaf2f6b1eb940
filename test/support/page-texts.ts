// What stands on a page for people, and where: every text, those that lie over each other, and what reaches out of its place. Leaves out what the texts should be.
import type { Page } from 'playwright-core'

export interface PageTexts {
  /** Every text in sight, and what readers that speak are told beside it. */
  readonly texts: readonly string[]
  /** Pairs of texts whose lines lie over each other. */
  readonly overlaps: readonly string[]
  /** Texts cut by their box, or reaching out of the window to the right. */
  readonly cut: readonly string[]
}

/** Opens what is folded, so that it is judged too. */
export async function unfold(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const one of document.querySelectorAll('details')) one.open = true
  })
}

export async function pageTexts(page: Page): Promise<PageTexts> {
  return await page.evaluate(() => {
    const LEAST_PX = 2
    const ATTRIBUTES = ['aria-label', 'title', 'alt', 'placeholder', 'aria-description']
    const texts = new Set<string>()
    const boxes: { text: string; rect: DOMRect }[] = []
    const cut = new Set<string>()
    /** Said to readers alone: clipped away, or shrunk to a dot. */
    const isDot = (element: Element): boolean => {
      const { position, overflow, clipPath } = getComputedStyle(element)
      if (position !== 'absolute' || overflow === 'visible') return false
      return clipPath === 'inset(50%)' || element.clientWidth <= LEAST_PX
    }
    /** Whether it or anything around it is a dot; asked of thousands, so that each is looked at once. */
    const inDot = new Map<Element, boolean>()
    const isInDot = (element: Element): boolean => {
      const known = inDot.get(element)
      if (known !== undefined) return known
      const { parentElement } = element
      const found =
        (element instanceof HTMLElement && isDot(element)) ||
        (parentElement !== null && isInDot(parentElement))
      inDot.set(element, found)
      return found
    }
    const isSeen = (element: Element): boolean =>
      !isInDot(element) &&
      element.checkVisibility({ visibilityProperty: true, opacityProperty: true })

    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const text = (node.textContent ?? '').trim()
      const parent = node.parentElement
      if (text === '' || parent === null || parent.closest('script, style') !== null) continue
      // Citations stand in the language they were published in, and say so.
      if (parent.closest('body [lang]') === null) texts.add(text)
      if (!isSeen(parent) || parent.closest('option, title, desc') !== null) continue
      const range = document.createRange()
      range.selectNodeContents(node)
      for (const rect of range.getClientRects()) {
        if (rect.width > LEAST_PX && rect.height > LEAST_PX) boxes.push({ text, rect })
      }
    }
    for (const element of document.body.querySelectorAll('*')) {
      for (const name of ATTRIBUTES) {
        const said = element.getAttribute(name)
        if (said !== null && said.trim() !== '') texts.add(said)
      }
    }

    const scroller = (element: Element | null): Element | null => {
      for (let one = element; one !== null && one !== document.body; one = one.parentElement) {
        const { overflowX } = getComputedStyle(one)
        if (['auto', 'scroll'].includes(overflowX)) return one
      }
      return null
    }
    const isCut = (element: Element): boolean => {
      const { overflowX, overflowY } = getComputedStyle(element)
      const wide = element.scrollWidth - element.clientWidth > LEAST_PX
      const tall = element.scrollHeight - element.clientHeight > LEAST_PX
      return (
        (wide && ['hidden', 'clip'].includes(overflowX)) ||
        (tall && ['hidden', 'clip'].includes(overflowY))
      )
    }
    for (const element of document.body.querySelectorAll<HTMLElement>('*')) {
      if (!isCut(element) || !isSeen(element) || element.closest('svg') !== null) continue
      // What is said costs most to find, so it is asked last.
      if (element.innerText?.trim()) cut.add(`cut: ${element.innerText.slice(0, 80)}`)
    }
    const right = document.documentElement.clientWidth
    const overlaps = new Set<string>()
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    for (let node = walk.nextNode(); node !== null; node = walk.nextNode()) {
      const parent = node.parentElement
      if (
        parent === null ||
        !isSeen(parent) ||
        parent.closest('option, title, desc, script, style') !== null
      )
        continue
      const range = document.createRange()
      range.selectNodeContents(node)
      const isOut = [...range.getClientRects()].some(
        (rect) => rect.right > right + LEAST_PX && rect.width > LEAST_PX,
      )
      if (isOut && scroller(parent) === null)
        cut.add(`out: ${(node.textContent ?? '').slice(0, 80)}`)
    }
    boxes.sort((a, b) => a.rect.top - b.rect.top)
    boxes.forEach((a, i) => {
      for (let j = i + 1; j < boxes.length; j += 1) {
        const b = boxes[j]
        if (b === undefined || b.rect.top >= a.rect.bottom) break
        const across = Math.min(a.rect.right, b.rect.right) - Math.max(a.rect.left, b.rect.left)
        const down = Math.min(a.rect.bottom, b.rect.bottom) - Math.max(a.rect.top, b.rect.top)
        // Lines of close type share a few pixels of leading.
        const leading = Math.min(a.rect.height, b.rect.height) * 0.35
        if (a.text !== b.text && across > LEAST_PX && down > leading) {
          overlaps.add(`${a.text.slice(0, 60)} | ${b.text.slice(0, 60)}`)
        }
      }
    })
    return { texts: [...texts], overlaps: [...overlaps], cut: [...cut] }
  })
}
