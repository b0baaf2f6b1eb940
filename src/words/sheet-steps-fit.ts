// The text of the steps of putting a set-up on. Leaves out the other phases.
import { flowText } from './number-text.ts'
import { numberOf } from './remark-value.ts'
import type { RemarkTexts } from './remark-value.ts'
import { say } from './say.ts'
import { flowOf } from './sheet-value.ts'

export const FIT_STEP_TEXTS: RemarkTexts = {
  EXPLAIN: () => say('Say what you do; sitting up if that is allowed.'),
  EXPLAIN_TO_PARENTS: () =>
    say('Tell the parents what you do; head straight, neck neither bent nor overstretched.'),
  EXCHANGER_OFF_FOR_DRUG: () =>
    say('Drug being nebulised: exchanger off meanwhile, back on afterwards.'),
  EXCHANGER_OFF_FIRST: () =>
    say('Take the heat and moisture exchanger off first: never together with this humidifier.'),
  SUCTION_FIRST: () => say('Suction first; the way through the neck is clean and open.'),
  CUFF_PRESSURE: () => say('Cuff pressure by gauge, 20–30 cmH₂O.'),
  CUFF_STAYS_DOWN: () => say('Cuff stays down: look at the pilot balloon.'),
  VALVE_CUFF_DOWN: () =>
    say('Cuff fully down before the speaking valve goes on: otherwise no breath gets out.'),
  CAP_OFF_IN_DISTRESS: () => say('Capped tube: in distress take the cap off at once.'),
  FILL_BAG: () =>
    say('Fill the bag before fitting: gas on, outlet held shut until the bag is full.'),
  WARM_GAS_FIRST: (v) =>
    say('Gas warm before it touches the nose; raise the flow in steps to {flow} as it is borne.', {
      flow: flowText(numberOf(v, 'flowLpm')),
    }),
  HOSE_HANGS_LOW: () => say('Hose lower than the patient; water trap at its lowest point.'),
  HOSE_WITHOUT_TRAP: () => say('Hose lower than the patient, in no loop where water gathers.'),
  PRONGS_IN: () =>
    say('Prongs curve down into the nose; tube over the ears, slide under the chin.'),
  PRONGS_TAPED: () =>
    say('Prongs curve down into the nose; tube taped to both cheeks, never round the neck.'),
  PRONGS_HALF: () => say('Prongs fill no more than half of each nostril.'),
  CATHETER_DEPTH: () =>
    say(
      'Catheter as deep as from nostril to the front of the ear: its tip in the nasopharynx; marked, taped to the cheek.',
    ),
  CANNULA_THEN_MASK: (v) =>
    say('Cannula first at {flow}, then the mask over it at {over}, each from its own meter.', {
      flow: flowOf(v, 'flowLpm'),
      over: flowOf(v, 'overLpm'),
    }),
  MASK_ON: () => say('Mask over nose and mouth, nose clip pressed, strap snug but not tight.'),
  MASK_SNUG: () => say('Mask snug, nose clip pressed, no gap at cheeks and chin.'),
  TENT_UNDER_CHIN: () => say('Tent under the chin, open upwards; hose does not pull it down.'),
  MASK_OVER_NECK: () =>
    say('Mask over the opening of the neck, not pressing on it; clothes and blanket clear of it.'),
  EXCHANGER_ON: () =>
    say('A new exchanger on the tube, dated, right for the size of the breaths; then the gas.'),
  T_PIECE_ON: () => say('T-piece on the tube; hose held so that nothing pulls at the tube.'),
  BOX_OVER_HEAD: () =>
    say('Box over the head, gas not blowing at the face; neck free, baby kept warm.'),
  PADS_AT_EARS: () =>
    say('Pads under tube or strap at the ears; glasses and hearing aids stay on.'),
  FEEDING_TUBE_BESIDE: () =>
    say('Feeding tube: oxygen into the other nostril if possible; feel for a leak beside it.'),
  FEEDING_TUBE_UNDER_RIM: () =>
    say('Feeding tube under the rim: nothing presses on it; feel for a leak beside it.'),
  SEAL_WITH_BEARD: () =>
    say('Beard or no teeth: dentures in if safe; feel for the leak at the rim.'),
  PRONE_NO_PRESSURE: () => say('Prone: no strap, tube or rim under eye, ear or cheek.'),
  NEVER_TIED: () =>
    say('Never tie down hands or mask; somebody stays, or choose what is borne better.'),
  OFF_WHEN_RETCHING: () =>
    say('Retching: mask off at once, turn, suction. A hand that can do it stays within reach.'),
  LET_HOLD_MASK: () => say('Let the patient hold it to the face first; never force it on.'),
  BURN_NOT_TIED: () => say('Burnt or injured skin: nothing rubs, no strap across it.'),
  MEALS: () => say('Meals and talk: ask for a cannula meanwhile; never simply without oxygen.'),
}
