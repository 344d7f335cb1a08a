/**
 * Line drawings of our own: how an exercise begins and how it goes on, seen from the side or from the front.
 * Lines stand for limbs and dots for joints; nothing is measured off them. Each drawing is 120 by 100, the
 * floor at 92.
 */
export interface Pose {
  readonly head: readonly [number, number];
  /** Limbs, as strokes from joint to joint. */
  readonly body: string;
  /** A weight held or strapped on. */
  readonly weight?: readonly [number, number];
  /** A band, from where it is tied to what pulls it. */
  readonly band?: string;
}

export interface Figure {
  /** Chair, wall, table: what stands still in both drawings. */
  readonly props: string;
  readonly begins: Pose;
  readonly goesOn: Pose;
}

const floor = 'M6 92H114';
const chair = `${floor}M30 70H60M32 70V92M58 70V92M30 70V36`;

/** Sitting tall on the chair: trunk and the leg that stays. */
const sitting = 'M42 38V66L64 66L66 90L75 90';
const sittingHead = [42, 27] as const;
const handOnThigh = 'M42 42L47 55L57 63';

/** Standing, seen from the side. */
const standing = 'M60 24V50L61 70L60 90L69 90';
const standingHead = [60, 13] as const;

const kneeStraightening: Figure = {
  props: chair,
  begins: { head: sittingHead, body: `${sitting}${handOnThigh}`, weight: [66, 84] },
  goesOn: { head: sittingHead, body: `M42 38V66L64 66L88 63L90 54${handOnThigh}`, weight: [83, 64] },
};

const standingUp: Figure = {
  props: chair,
  begins: { head: [62, 33], body: 'M54 43L44 66L65 66L62 90L71 90M54 46L62 56L72 60' },
  goesOn: { head: [64, 13], body: 'M64 24V50L65 70L62 90L71 90M64 28L69 40L72 52' },
};

const heelRaising: Figure = {
  props: `${floor}M84 46V92M80 46H100`,
  begins: { head: standingHead, body: `${standing}M60 28L68 38L81 46` },
  goesOn: { head: [61, 10], body: 'M61 21V47L62 67L61 86L69 91M61 25L69 36L81 45' },
};

const elbowBending: Figure = {
  props: chair,
  begins: { head: sittingHead, body: `${sitting}M42 42L44 56L48 69`, weight: [48, 70] },
  goesOn: { head: sittingHead, body: `${sitting}M42 42L44 56L55 46`, weight: [56, 45] },
};

const sideLegLifting: Figure = {
  props: floor,
  begins: { head: [17, 78], body: 'M28 82L54 83L78 84L100 86M54 83L76 88L98 90M28 82L36 90L46 90' },
  goesOn: { head: [17, 78], body: 'M28 82L54 83L76 69L97 56M54 83L76 88L98 90M28 82L36 90L46 90' },
};

/** Seen from the front. */
const front = 'M60 24V50M50 26H70M60 50L54 70L54 90M60 50L66 70L66 90M50 26L47 39L46 52';

const armToTheSide: Figure = {
  props: floor,
  begins: { head: standingHead, body: `${front}M70 26L73 39L74 52`, weight: [74, 54] },
  goesOn: { head: standingHead, body: `${front}M70 26L84 25L98 25`, weight: [100, 25] },
};

const legToTheSide: Figure = {
  props: `${floor}M36 50V92M28 50H40`,
  begins: {
    head: standingHead,
    body: 'M60 24V50M50 26H70M60 50L56 70L56 90M60 50L64 70L65 90M50 26L43 38L38 49',
  },
  goesOn: {
    head: standingHead,
    body: 'M60 24V50M50 26H70M60 50L56 70L56 90M60 50L76 65L90 81M50 26L43 38L38 49',
  },
};

const wristBending: Figure = {
  props: `${floor}M12 70H40M14 70V92M38 70V92M48 58H84M80 58V92`,
  begins: { head: [24, 24], body: 'M24 35V66L44 66L46 90L55 90M24 40L36 54L80 54L92 60', weight: [94, 61] },
  goesOn: { head: [24, 24], body: 'M24 35V66L44 66L46 90L55 90M24 40L36 54L80 54L91 45', weight: [93, 43] },
};

const bridge: Figure = {
  props: floor,
  begins: { head: [16, 86], body: 'M27 88L58 88L78 66L82 90L91 90M27 88L40 91L52 91' },
  goesOn: { head: [16, 86], body: 'M27 88L56 70L78 66L82 90L91 90M27 88L40 91L52 91' },
};

const straightLeg: Figure = {
  props: floor,
  begins: { head: [16, 86], body: 'M27 88L56 88L80 88L104 88M56 88L72 68L80 90M27 88L40 91L52 91' },
  goesOn: { head: [16, 86], body: 'M27 88L56 88L77 75L98 61M56 88L72 68L80 90M27 88L40 91L52 91' },
};

const wallPush: Figure = {
  props: `${floor}M100 6V92`,
  begins: { head: [60, 14], body: 'M56 26L44 58L34 90L43 90M56 28L76 32L98 34' },
  goesOn: { head: [80, 18], body: 'M74 29L55 59L34 90L43 90M74 31L80 44L98 36' },
};

const squatting: Figure = {
  props: `${floor}M88 46V92M84 46H104`,
  begins: { head: standingHead, body: `${standing}M60 28L70 38L84 45` },
  goesOn: { head: [64, 26], body: 'M60 36L46 62L67 68L60 90L69 90M60 39L72 44L84 46' },
};

const kneeBending: Figure = {
  props: `${floor}M84 46V92M80 46H100`,
  begins: { head: standingHead, body: `${standing}M60 28L68 38L81 46` },
  goesOn: {
    head: standingHead,
    body: 'M60 24V50L61 70L60 90L69 90M60 50L59 70L38 72L37 80M60 28L68 38L81 46',
  },
};

const rowing: Figure = {
  props: `${chair}M112 40V92`,
  begins: { head: sittingHead, body: `${sitting}M42 42L56 50L72 52`, band: 'M72 52L112 52' },
  goesOn: { head: sittingHead, body: `${sitting}M42 42L30 53L46 55`, band: 'M46 55L112 52' },
};

const marching: Figure = {
  props: `${floor}M84 46V92M80 46H100`,
  begins: { head: standingHead, body: `${standing}M60 28L68 38L81 46` },
  goesOn: {
    head: standingHead,
    body: 'M60 24V50L61 70L60 90L69 90M60 50L75 57L72 76L80 77M60 28L68 38L81 46',
  },
};

/** By exercise of the catalogue; where words are enough, or no line shows it, there is none. */
export const figures: Readonly<Record<string, Figure>> = {
  'knee-extension-seated': kneeStraightening,
  'knee-extension-seated-one-kilo': kneeStraightening,
  'sit-to-stand-high-seat': standingUp,
  'sit-to-stand-raised-chair': standingUp,
  'sit-to-stand-cushion': standingUp,
  'sit-to-stand-chair': standingUp,
  'sit-to-stand-low-chair': standingUp,
  'heel-raise-two-legs': heelRaising,
  'curl-seated': elbowBending,
  'curl-seated-one-kilo': elbowBending,
  'curl-seated-two-kilos': elbowBending,
  'side-lying-hip-abduction': sideLegLifting,
  'side-arm-raise-straight': armToTheSide,
  'side-leg-raise-standing': legToTheSide,
  'wrist-bend-up': wristBending,
  'bridge-two-legs': bridge,
  'straight-leg-raise': straightLeg,
  'wall-push-up': wallPush,
  'squat-two-legs': squatting,
  'knee-bend-standing': kneeBending,
  'row-band-seated': rowing,
  'march-standing': marching,
};
