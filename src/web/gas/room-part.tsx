// A room, an ambulance or a tent filling with oxygen: time to the limit, air changes needed, its course as a picture. Leaves out where in it the share is higher, which is said.
import { roomSvg, roomText } from '../../pictures/gas-room.ts'
import { roomCourse, ROOM_EXAMPLES, ROOM_KINDS } from '../../supply/room-answer.ts'
import type { RoomCourse, RoomQuestion } from '../../supply/room-answer.ts'
import { GAS_TEXT } from '../../words/gas-page-text.ts'
import {
  changesText,
  outsideAirText,
  ROOM_TEXT,
  roomBasisLines,
  roomKindName,
  shareOfOxygenText,
} from '../../words/gas-room-text.ts'
import { durationText } from '../../words/number-text.ts'
import { supplyTexts } from '../../words/supply-text.ts'
import { drawText } from '../../words/supply-value.ts'
import type { GasUnits } from '../../words/supply-value.ts'
import { textOfNumber } from '../case/typed-number.ts'
import { ChoiceField } from '../parts/choice-field.tsx'
import { Facts } from '../parts/facts.tsx'
import { Fold } from '../parts/fold.tsx'
import { Lines } from '../parts/lines.tsx'
import { Picture } from '../parts/picture.tsx'
import { GasNumber } from './gas-fields.tsx'
import type { GasForm } from './gas-fields.tsx'
import { GasRefused } from './gas-refused.tsx'
import { useKeptForm } from './kept-form.ts'
import type { KeptForm, Texts } from './kept-form.ts'
import { followed, formReader, readAll } from './read-form.ts'
import type { ReadForm } from './read-form.ts'
import { useGasUnits } from './use-gas-units.ts'

const RULES = {
  volumeM3: { min: 1, max: 100_000, unit: 'm³' },
  airChangesPerHour: { min: 0, max: 200, unit: '/h' },
  oxygenLpm: { min: 0, max: 9000, unit: 'L/min' },
  asideLpm: { min: 0, max: 1000, unit: 'L/min' },
  shownMinutes: { min: 1, max: 10_080, unit: 'min' },
  limitPercent: { min: 21.1, max: 99, unit: '%' },
} as const

const PER_CENT = 100
const NAMES = ['volumeM3', 'airChangesPerHour', 'oxygenLpm', 'asideLpm'] as const
const MORE_NAMES = ['shownMinutes', 'limitPercent'] as const

/** Invented. */
const START: KeptForm = {
  texts: {
    example: 'yes',
    place: 'side-room',
    volumeM3: '30',
    airChangesPerHour: '6',
    oxygenLpm: '60',
    asideLpm: '0',
    shownMinutes: '60',
    limitPercent: '23.5',
  },
  rows: [],
}

export function RoomPart() {
  const { form, change } = useKeptForm('room', START)
  const read = followed(readRoom(form.texts), (question) => ({
    question,
    course: roomCourse(question),
  }))
  const type = (name: string, text: string): void => {
    const { example: _, ...own } = form.texts
    const { place: __, ...texts } = own
    const keepsPlace = name !== 'volumeM3' && name !== 'airChangesPerHour'
    change({ ...form, texts: { ...(keepsPlace ? own : texts), [name]: text } })
  }
  const fields: GasForm = {
    prefix: 'room',
    texts: form.texts,
    problems: read.ok ? [] : read.problems,
    type,
  }
  return (
    <>
      <p className="section-help">{ROOM_TEXT.help()}</p>
      <section className="gas-card" aria-label={ROOM_TEXT.picture()}>
        <div className="gas-result">
          {form.texts['example'] === undefined ? null : (
            <p className="badge-line">{GAS_TEXT.example()}</p>
          )}
          {read.ok ? <RoomResult {...read.value} /> : <GasRefused problems={read.problems} />}
        </div>
        <div className="gas-form">
          <PlaceChoice texts={form.texts} onChoose={(texts) => change({ ...form, texts })} />
          {[...NAMES, ...MORE_NAMES].map((name) => (
            <GasNumber key={name} form={fields} name={name} unit={RULES[name].unit} />
          ))}
        </div>
      </section>
    </>
  )
}

function readRoom(texts: Texts): ReadForm<RoomQuestion> {
  const reader = formReader(texts, 'room')
  const volumeM3 = reader.number('volumeM3', RULES.volumeM3)
  const airChangesPerHour = reader.number('airChangesPerHour', RULES.airChangesPerHour)
  const givenLpm = reader.number('oxygenLpm', RULES.oxygenLpm)
  const asideLpm = reader.optional('asideLpm', RULES.asideLpm) ?? 0
  const minutes = reader.number('shownMinutes', RULES.shownMinutes)
  const limitPercent = reader.number('limitPercent', RULES.limitPercent)
  return readAll(reader, () => ({
    volumeM3,
    airChangesPerHour,
    oxygenLpm: givenLpm + asideLpm,
    asideLpm,
    minutes,
    limitO2Fraction: limitPercent / PER_CENT,
    isExample: texts['place'] !== undefined,
  }))
}

function PlaceChoice(props: { readonly texts: Texts; readonly onChoose: (texts: Texts) => void }) {
  const { texts, onChoose } = props
  return (
    <ChoiceField
      field="room.place"
      label={ROOM_TEXT.place()}
      value={texts['place'] ?? ''}
      empty={texts['place'] === undefined ? ROOM_TEXT.ownPlace() : undefined}
      onChoose={(place) => {
        const kind = ROOM_KINDS.find((one) => one === place)
        if (kind === undefined) return
        const { volumeM3, airChangesPerHour } = ROOM_EXAMPLES[kind]
        onChoose({
          ...texts,
          place,
          volumeM3: textOfNumber(volumeM3),
          airChangesPerHour: textOfNumber(airChangesPerHour),
        })
      }}
      choices={ROOM_KINDS.map((kind) => ({ value: kind, text: roomKindName(kind) }))}
    />
  )
}

/** A mask laid aside is told of once: as it runs, or as a case to think of. */
function mindLines(
  { asideLpm = 0 }: RoomQuestion,
  { remarks }: RoomCourse,
  units: GasUnits,
): readonly string[] {
  const texts = supplyTexts(remarks, units)
  return asideLpm > 0 ? texts : [...texts, ROOM_TEXT.aside()]
}

function RoomResult(props: { readonly question: RoomQuestion; readonly course: RoomCourse }) {
  const { question, course } = props
  const units = useGasUnits()
  const { minutesToLimit } = course
  return (
    <div className="plan gas-sheet">
      <div className="answer">
        <output className="gas-change">
          {minutesToLimit === null ? (
            <strong className="answer-name">{ROOM_TEXT.never()}</strong>
          ) : (
            <>
              <span>{ROOM_TEXT.reached()}</span>{' '}
              <strong className="gas-clock">{durationText(Math.floor(minutesToLimit))}</strong>
            </>
          )}
        </output>
        <Facts
          facts={[
            { name: ROOM_TEXT.settles(), value: shareOfOxygenText(course.steadyO2Fraction) },
            { name: ROOM_TEXT.limit(), value: shareOfOxygenText(course.limitO2Fraction) },
            { name: ROOM_TEXT.needed(), value: changesText(course.airChangesNeededPerHour) },
            { name: ROOM_TEXT.outsideAir(), value: outsideAirText(course.outsideAirNeededM3PerH) },
            { name: ROOM_TEXT.total(), value: drawText(question.oxygenLpm) },
          ]}
        />
      </div>
      <section className="section">
        <h2>{ROOM_TEXT.picture()}</h2>
        <Picture draw={(widthPx) => roomSvg({ course, widthPx })} />
        <p>{roomText({ course })}</p>
      </section>
      <section className="section">
        <h2>{ROOM_TEXT.mind()}</h2>
        <Lines lines={mindLines(question, course, units)} />
      </section>
      <Fold heading={GAS_TEXT.assumptions()} level={2}>
        <Lines lines={roomBasisLines(question)} />
      </Fold>
    </div>
  )
}
