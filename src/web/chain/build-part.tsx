// Picks interface, source and humidifier, for the patient on Bedside or a usual one, and asks for the chain. Leaves out what is said of it, and the practice.
import type { Remote } from 'comlink'
import { useMemo, useState } from 'react'
import { useSearchParams } from 'wouter'
import type { Shelf } from '../../kit/shelf.ts'
import { placePressure } from '../../planning/place-pressure.ts'
import type { PlacePressure } from '../../planning/place-pressure.ts'
import { CHAIN_PAGE, notOnShelfText } from '../../words/chain-page-text.ts'
import { problemLineText } from '../../words/web-form-text.ts'
import { BrokeOff } from '../parts/broke-off.tsx'
import { useSettings } from '../settings/settings-store.ts'
import { siteAltitude } from '../settings/site-altitude.ts'
import { useShelf } from '../shelf/shelf-store.ts'
import type { ChainApi, ChainAsked } from '../worker/chain-api.ts'
import { useChainAnswer } from '../worker/use-chain-answer.ts'
import { bedsidePatient } from './bedside-patient.ts'
import type { BedsidePatient } from './bedside-patient.ts'
import { BuildForm } from './build-form.tsx'
import { readSearch } from './chain-address.ts'
import { FIRST_CHOICE, notTaken, pickedFrom } from './chain-choice.ts'
import type { ChainChoice, Picked } from './chain-choice.ts'
import { ChainResult } from './chain-result.tsx'
import { keepChoice, keptChoice } from './chain-store.ts'
import { SheetDoor } from './sheet-door.tsx'
import { wholePicks } from './whole-picks.ts'

export function BuildPart() {
  const { shelf } = useShelf()
  const [search, setSearch] = useSearchParams()
  const bedside = useBedsidePatient(shelf)
  const [picks, setPicks] = useState(() => firstPicks(bedside))
  const address = search.toString()
  const patient = bedside.kind === 'patient' ? bedside : null
  const about = patient?.about ?? null
  const { choice } = picks
  // An address is taken once; then the picks are the reader's own.
  if (address !== '' && address !== picks.address) {
    const named = wholePicks({ shelf, named: readSearch(address), before: choice, about })
    setPicks({ choice: { ...choice, ...named }, address })
  }
  const picked = useMemo(() => pickedFrom(shelf, choice, about), [shelf, choice, about])
  if (picked === null) return null
  const choose = (chosen: ChainChoice): void => {
    setPicks({ choice: chosen, address: '' })
    keepChoice(localStorage, chosen)
    if (address !== '') setSearch({}, { replace: true })
  }
  const missed = picks.address === '' ? [] : notTaken(readSearch(picks.address), picked)
  return (
    <div className="chain-build">
      <BuildForm shelf={shelf} picked={picked} bedside={bedside} onChoose={choose} />
      <div className="chain-found">
        {missed.length === 0 ? null : <p role="alert">{notOnShelfText(missed)}</p>}
        <Answer shelf={shelf} picked={picked} bedside={patient} />
      </div>
    </div>
  )
}

function useBedsidePatient(shelf: Shelf): BedsidePatient {
  const siteAltitudeM = siteAltitude(useSettings().altitudeTyped).altitudeM
  return useMemo(
    () => bedsidePatient({ storage: localStorage, shelf, siteAltitudeM }),
    [shelf, siteAltitudeM],
  )
}

interface Picks {
  readonly choice: ChainChoice
  /** The address from which they were taken; empty once the reader has picked. */
  readonly address: string
}

/** What was picked before; where another set-up has come in sight on Bedside since, that one. */
function firstPicks(bedside: BedsidePatient): Picks {
  const kept = keptChoice(localStorage)
  if (bedside.kind !== 'patient') return { choice: kept ?? FIRST_CHOICE, address: '' }
  const { inSight, wardId } = bedside
  const before = kept ?? { ...FIRST_CHOICE, wardId }
  const choice =
    inSight === before.begunFrom
      ? before
      : { ...before, ...readSearch(inSight), patient: 'bedside', begunFrom: inSight }
  return { choice, address: '' }
}

/** Where the patient lies, else where the shelf stands. */
function placeFor({ picked, bedside, shelf }: AnswerProps): PlacePressure {
  return placePressure(picked.about === bedside?.about ? bedside.about.site : {}, shelf)
}

interface AnswerProps {
  readonly shelf: Shelf
  readonly picked: Picked
  readonly bedside: Extract<BedsidePatient, { kind: 'patient' }> | null
}

function Answer({ shelf, picked, bedside }: AnswerProps) {
  const question = useMemo(() => questionOf({ shelf, picked, bedside }), [shelf, picked, bedside])
  const waited = useChainAnswer({ slot: 'chain', question, ask })
  switch (waited.kind) {
    case 'failed':
      return <BrokeOff said={waited.failure} onRetry={waited.retry} />
    case 'refused':
      return <p role="alert">{problemLineText(waited.problem)}</p>
    case 'waiting':
      return <output>{CHAIN_PAGE.working()}</output>
    case 'answered':
      return (
        <ChainResult
          shelf={shelf}
          solved={waited.value}
          isStale={waited.isStale}
          door={<SheetDoor shelf={shelf} picked={picked} bedside={bedside} />}
        />
      )
  }
}

const ask = async (core: Remote<ChainApi>, asked: ChainAsked) => await core.solve(asked)

function questionOf(asked: AnswerProps): ChainAsked {
  const { shelf, picked } = asked
  const { wanted, about, choice } = picked
  return {
    shelf,
    wanted,
    about: { patient: about.patient, breathing: about.breathing },
    place: placeFor(asked),
    ...(choice.wardId === '' ? {} : { wardId: choice.wardId }),
  }
}
