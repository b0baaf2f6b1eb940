// The transfer planner: what is typed on one side, cylinders and times on the other, and a sheet to print. Leaves out how it is worked out.
import type { Remote } from 'comlink'
import { useCallback, useState } from 'react'
import { GAS_TEXT } from '../../words/gas-page-text.ts'
import { TRANSFER_TEXT } from '../../words/gas-transfer-text.ts'
import { useSettings } from '../settings/settings-store.ts'
import { siteAltitude } from '../settings/site-altitude.ts'
import { useShelf } from '../shelf/shelf-store.ts'
import type { GasApi, TransferRequest } from './gas-api.ts'
import { GasRefused } from './gas-refused.tsx'
import { useKeptForm } from './kept-form.ts'
import { followed } from './read-form.ts'
import { EXAMPLE_STORE, readStore } from './store-form.ts'
import { EXAMPLE_TRANSFER, readTransfer } from './transfer-form.ts'
import { TransferFields } from './transfer-fields.tsx'
import { TransferRest, TransferResult } from './transfer-result.tsx'
import { useBedsideDraw } from './use-bedside-draw.ts'
import { useGasAnswer } from './use-gas-answer.ts'
import { useGasUnits } from './use-gas-units.ts'
import { useNow } from './use-now.ts'

export function TransferPart() {
  const way = useKeptForm('transfer', EXAMPLE_TRANSFER)
  const store = useKeptForm('store', EXAMPLE_STORE)
  const [stopLegIndex, setStopLegIndex] = useState<number | null>(null)
  const { shelf } = useShelf()
  const bedside = useBedsideDraw()
  const units = useGasUnits()
  const now = useNow()
  const { altitudeM: siteAltitudeM } = siteAltitude(useSettings().altitudeTyped)
  const stored = readStore(store.form)
  const read = readTransfer(way.form, { bedside, store: stored, now, siteAltitudeM, shelf })
  const ask = useCallback(
    async (core: Remote<GasApi>, request: TransferRequest) => await core.transfer(request),
    [],
  )
  const answer = useGasAnswer(
    followed(read, ({ question }): TransferRequest => {
      const isLeg = stopLegIndex !== null && stopLegIndex < question.legs.length
      return { question, stopLegIndex: isLeg ? stopLegIndex : null }
    }),
    ask,
  )
  const problems = answer.kind === 'refused' ? answer.problems : []
  const isExample =
    way.form.texts['example'] !== undefined || store.form.texts['example'] !== undefined
  const shown =
    answer.kind === 'answered' && read.ok
      ? {
          request: answer.question,
          answer: answer.value,
          isStale: answer.isStale,
          leaveAt: read.value.leaveAt,
          airFrom: read.value.airFrom,
          stopLegIndex,
          onStop: setStopLegIndex,
          units,
        }
      : null
  return (
    <>
      <p className="section-help">{TRANSFER_TEXT.help()}</p>
      <section className="gas-card" aria-label={TRANSFER_TEXT.sheet()}>
        <div className="gas-result">
          {isExample ? <p className="badge-line">{GAS_TEXT.example()}</p> : null}
          {answer.kind === 'refused' ? <GasRefused problems={problems} /> : null}
          {answer.kind === 'failed' ? <p className="must-act">{answer.failure}</p> : null}
          {shown === null ? null : <TransferResult {...shown} />}
        </div>
        <div className="gas-form">
          <TransferFields
            way={way}
            store={store}
            problems={problems}
            bedside={bedside}
            plan={shown?.answer.plan ?? null}
          />
        </div>
        {shown === null ? null : (
          <div className="gas-rest">
            <TransferRest {...shown} />
          </div>
        )}
      </section>
    </>
  )
}
