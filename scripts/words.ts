// `npm run words:extract` and `npm run words:compile`: the catalogues of messages brought up to date. Leaves out translating them.
import { compileMessages, extractMessages, TRANSLATED, translationsIn } from './word-catalogues.ts'

if (process.argv.includes('extract')) await extractMessages()
await compileMessages()
for (const language of TRANSLATED) {
  const translations = [...(await translationsIn(language)).values()]
  const missing = translations.filter((text) => text === '').length
  console.log(`${language}: ${translations.length} messages, ${missing} not translated`)
}
