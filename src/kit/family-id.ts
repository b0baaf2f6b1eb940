// The interface families and their fits by name. What each does to gas stands in families/ and delivery/.

export const FAMILY_IDS = [
  'nasal-cannula',
  'nasal-catheter',
  'simple-mask',
  'partial-rebreather-mask',
  'non-rebreather-mask',
  'entrainment-mask',
  'adjustable-entrainment-mask',
  'aerosol-mask',
  'face-tent',
  'tracheostomy-mask',
  't-piece',
  't-piece-with-limb',
  'head-box',
  'nasal-high-flow',
  'cannula-under-mask',
] as const

export type FamilyId = (typeof FAMILY_IDS)[number]

export const SIZE_IDS = ['preterm', 'newborn', 'infant', 'child', 'adult'] as const
export type SizeId = (typeof SIZE_IDS)[number]

/** How the interface lies on the face. `over-surgical-mask`: a cloth or surgical mask lies between. */
export const FIT_IDS = ['tight', 'gentle', 'loose', 'over-surgical-mask'] as const
export type FitId = (typeof FIT_IDS)[number]

/** What the gas reaches first. */
export type OpeningId = 'nose' | 'face' | 'neck' | 'head'

/** Small-bore oxygen tubing, or a 22 mm breathing hose with a mixed gas stream. */
export type FeedId = 'small-bore' | 'wide-bore'
