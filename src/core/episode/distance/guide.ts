/**
 * An appointment by video or telephone, joint by joint: what the camera has to show, what is asked, and what stays
 * undone until somebody meets in person. Which parts can be judged at a distance, and how, is common practice, no
 * source, and is to be confirmed by a licensed clinician. Nothing here is read by a rule.
 */
import type { LimitInForce } from '../../decision/dose/limits.ts';
import { type Joint, type JointName, jointNameOf } from '../../exercises/joints.ts';
import { isRemote, type VisitPlace } from '../remote-visit.ts';

export const partsOfGuide = ['look', 'press', 'move', 'task'] as const;
export type GuidePart = (typeof partsOfGuide)[number];

/** How a part was judged: with one's own eyes, by what the patient said, or not at all. */
export const judgedBy = ['seen', 'told', 'not-done'] as const;
export type JudgedBy = (typeof judgedBy)[number];

interface Shown {
  /** Where the camera stands and what of the body is bare. */
  readonly camera: string;
  readonly move: string;
  readonly task: string;
  /** Weight goes through the limb, so a limit on weight-bearing closes it. */
  readonly bears: boolean;
}

const standingUp =
  'Stand up from a chair that stands against a wall and sit down again, once, with somebody beside; arms as needed';

const ofHand: Shown = {
  camera: 'Both hands flat on a table in good light, a hand’s breadth from the camera; back, then palm',
  move: 'Make a fist, spread the fingers, thumb to each fingertip',
  task: 'Button a shirt or pick up a coin',
  bears: false,
};

const shown: Readonly<Record<JointName, Shown>> = {
  shoulder: {
    camera: 'Both shoulders bare, camera at chest height two metres off; from the front, then from behind',
    move: 'Raise both arms forwards and sideways, turn the forearms out, hand behind the back',
    task: 'Reach a shelf at head height with an empty hand',
    bears: false,
  },
  elbow: {
    camera: 'Both elbows bare on a table in good light, camera half a metre off; inside and outside',
    move: 'Bend and straighten both, turn the palms up and down',
    task: 'Lift a full cup to the mouth',
    bears: false,
  },
  wrist: {
    camera: 'Both forearms bare on a table in good light; back of the hand, then the palm',
    move: 'Bend the wrists up and down, to both sides, turn the palms up and down',
    task: 'Wring out a cloth or open a jar that has been opened before',
    bears: false,
  },
  'thumb-base': ofHand,
  'finger-joint': ofHand,
  hand: ofHand,
  hip: {
    camera: 'Whole body from the side, camera at hip height three metres off',
    move: 'Standing at a support: knee towards the chest, leg to the side, leg backwards',
    task: standingUp,
    bears: true,
  },
  knee: {
    camera: 'Both knees bare, camera at knee height one metre off; from the front, then from each side',
    move: 'Sitting, then lying if there is room: bend and straighten each knee',
    task: standingUp,
    bears: true,
  },
  ankle: {
    camera: 'Both ankles bare, camera at floor height; from the front, from behind, from each side',
    move: 'Sitting: foot up and down, sole inwards and outwards',
    task: 'Rise onto the toes of both feet, both hands on a support',
    bears: true,
  },
  foot: {
    camera: 'Both feet bare, camera at floor height; from the front, from behind, then the soles',
    move: 'Sitting: curl and spread the toes',
    task: 'Five steps towards the camera and back, barefoot, beside a wall',
    bears: true,
  },
  neck: {
    camera: 'Head and shoulders from the front, then from the side',
    move: 'Chin to chest, look up, look over each shoulder, ear to each shoulder; only as far as is comfortable',
    task: 'Look over the shoulder as when crossing a road',
    bears: false,
  },
  'low-back': {
    camera: 'Whole body from the side, then from behind, camera at hip height three metres off',
    move: 'Standing at a support: bend forwards, backwards and to each side',
    task: standingUp,
    bears: true,
  },
};

export interface GuideStep {
  readonly part: GuidePart;
  /** What the camera must show; null where nothing is to be seen by this line. */
  readonly camera: string | null;
  readonly ask: string;
  /** Why it is left out, and kept as not done; null = it may be asked for. */
  readonly locked: string | null;
  readonly ways: readonly JudgedBy[];
}

const asks = ({ move, task }: Shown, place: VisitPlace): Readonly<Record<GuidePart, string>> => ({
  look:
    place === 'telephone'
      ? 'Swelling, redness, warmth or a wound beside the other side, in the patient’s words'
      : 'Swelling, colour, shape and scars beside the other side',
  press: 'Press with one finger around the joint, and say where it hurts and how much (0–10)',
  move: `${move}; say the pain (0–10)`,
  task: `${task}; say the pain (0–10)`,
});

const lockOf = (
  joint: Joint,
  part: GuidePart,
  { bears }: Shown,
  limits: readonly LimitInForce[],
): string | null => {
  // Who stands, stands on both legs: a limit on either closes it.
  const bearing = limits.find(({ kind }) => kind === 'weight-bearing');
  if (part === 'task' && bears && bearing) return `Weight-bearing is limited by ${bearing.author}.`;
  const range = limits.find((limit) => limit.kind === 'range' && limit.joint === joint);
  if ((part === 'move' || part === 'task') && range) return `The range is limited by ${range.author}.`;
  return null;
};

/** How a part may be judged by this line. */
export const waysBy = (place: string): readonly JudgedBy[] =>
  judgedBy.filter((way) => place === 'video' || way !== 'seen');

/** What is done of a joint by this line, in order. */
export const guideFor = (
  joint: Joint,
  place: VisitPlace,
  limits: readonly LimitInForce[],
): readonly GuideStep[] => {
  if (!isRemote(place)) return [];
  const of = shown[jointNameOf(joint)];
  const isSeen = place === 'video';
  return partsOfGuide.map((part) => {
    const locked = lockOf(joint, part, of, limits);
    return {
      part,
      camera: isSeen ? of.camera : null,
      ask: asks(of, place)[part],
      locked,
      ways: waysBy(place),
    };
  });
};

/** Said with every such appointment: what nobody judged, whatever was seen. */
export const notAtADistance = [
  'movement led by the examiner, and its end feel',
  'ligaments and joint play',
  'warmth, fluid in the joint and tenderness under the examiner’s hand',
  'strength against the examiner or a dynamometer',
  'feeling, reflexes and pulses',
  'girth, blood pressure by the clinic and cuff pressure',
] as const;
