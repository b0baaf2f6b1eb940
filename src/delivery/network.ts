// The gas pockets between device, room and lungs as plain numbers, the common form of every interface family. No physics here.

/** A reservoir bag on the inner pocket. */
export interface Bag {
  readonly volumeL: number
  /** Conductance of the leak path (seal, ports) over that of the bag's path: about 0.05 tight to 4 loose. */
  readonly leakRatio: number
  /** Share of device gas that slips past a slack bag while supply exceeds demand (0–1). */
  readonly forwardLoss: number
  /** True for a non-rebreather: nothing but device gas enters the bag. */
  readonly hasInletValve: boolean
  /** Share of expired gas that goes into a bag without valve until it is full (0 with a valve). */
  readonly expiredShareIntoBag: number
}

/**
 * All volumes L, all flows L/s BTPS. Gas runs room ⇄ outer ⇄ inner ⇄ mixed airway ⇄ serial airway ⇄ alveoli;
 * a second path room (or outer) ⇄ side ⇄ mixed airway carries the rest of the breath (mouth, or nose and mouth beside a tube).
 */
export interface Network {
  /** Gas that the device pushes into the inner pocket, entrained air included. */
  readonly deviceFlowLps: number
  /** Share of that flow which is source gas; the rest is room air entrained by the device. */
  readonly sourceShare: number
  readonly innerL: number
  readonly outerL: number
  readonly sideL: number
  readonly mixedL: number
  readonly serialL: number
  readonly serialTanks: number
  /** Whether an outer pocket lies between the inner pocket and the room. */
  readonly hasOuter: boolean
  /** Share of the breath drawn in through the inner pocket. */
  readonly innerShareIn: number
  /** Share of the breath let out into the inner pocket. */
  readonly innerShareOut: number
  /** Whether the side path draws from the outer pocket (a mouth under a mask) or from the room. */
  readonly sideFromOuter: boolean
  /** Two-way exchange of the outermost pocket with the room (jets, draught). */
  readonly exchangeLps: number
  /** Share of the device flow that enters the inner pocket while the patient breathes out or pauses. */
  readonly captureOut: number
  /** Flow from the inner pocket through the mixed airway and out by the side path while the patient breathes out or pauses. */
  readonly flushLps: number
  readonly outerDeviceFlowLps: number
  readonly outerSourceShare: number
  readonly bag: Bag | null
}

/** A patient without any interface; families override what they change. */
export const BARE_NETWORK: Network = {
  deviceFlowLps: 0,
  sourceShare: 1,
  innerL: 0,
  outerL: 0,
  sideL: 0,
  mixedL: 0.072,
  serialL: 0.066,
  serialTanks: 3,
  hasOuter: false,
  innerShareIn: 1,
  innerShareOut: 1,
  sideFromOuter: false,
  exchangeLps: 0,
  captureOut: 1,
  flushLps: 0,
  outerDeviceFlowLps: 0,
  outerSourceShare: 1,
  bag: null,
}
