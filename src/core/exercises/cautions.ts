/** Cautions that go with an exercise whoever does it. Common practice unless a source key is named. */
import type { Caution } from '../prescribing/cautions/caution.ts';
import type { ExerciseCautionId } from '../prescribing/cautions/ids.ts';

const caution = (id: ExerciseCautionId, text: string): Caution => ({
  id,
  text,
  patient: { key: id },
  from: 'exercise',
  support: 'common-practice',
});

export const exerciseCautions: readonly Caution[] = [
  caution(
    'steady-seat',
    'Seat must not slide or tip; put it against a wall. Check the height against the prescription.',
  ),
  caution(
    'fall-risk-standing',
    'Balance is part of the task. Provide a firm hand hold; reconsider with falls, dizziness or neuropathy.',
  ),
  caution(
    'wrist-load',
    'Wrist bears load in extension. Offer handles or fists where wrist or hand joints are sore.',
  ),
  caution('surface-slip', 'Hands or feet can slide. The support must be fixed and dry.'),
  caution('breath-holding', 'No breath holding: it raises blood pressure during effort.'),
  caution('floor-transfer', 'Needs getting down to and up from the floor or bed. Check the transfer first.'),
  caution(
    'band-snap',
    'Check the band for nicks and the anchor before each session; keep the line of the band off the face.',
  ),
  caution(
    'anchor-strength',
    'The anchor carries a large share of body weight. Test it before the first session.',
  ),
  caution(
    'overhead-arm',
    'Overhead range. Limit the range with shoulder impingement, instability or repair.',
  ),
  caution(
    'weight-drop',
    'A dropped weight can injure; grip may be weak in hand arthritis. Offer a cuff instead.',
  ),
  caution('hip-bend-limit', 'Deep hip flexion. Keep to the surgeon’s limits after hip replacement.'),
  caution(
    'knee-end-range',
    'A weight loads the knee most when it is straight. Shorten the range where the kneecap joint is sore.',
  ),
  caution('knee-bend-pain', 'Long holds at a bent knee load the kneecap joint. Choose the angle by pain.'),
  caution('grip-strain', 'Needs a firm grip. Use wide handles or a loop where finger joints are sore.'),
  caution(
    'low-back-bend',
    'Forward lean loads the low back. Keep the trunk straight; reconsider with osteoporosis or fracture of the spine.',
  ),
  caution('low-back-arch', 'End-range extension can provoke low-back or leg pain. Limit the height.'),
  caution('side-lying-hip', 'Pressure on the outer hip in side lying. Pad it, or choose standing.'),
  caution(
    'front-lying',
    'Lying on the front may not suit neck, chest, belly or breathing. Offer another position.',
  ),
  caution('toe-joint', 'Full weight on the big-toe joint. Limit the height where it is stiff or sore.'),
  caution(
    'kneeling',
    'Direct pressure on the front of the knee. Pad it; avoid after recent knee surgery or with bursitis.',
  ),
  caution(
    'head-low',
    'Head below the hips raises pressure in head and eyes. Avoid with uncontrolled blood pressure or eye disease.',
  ),
  caution(
    'hand-joint-pain',
    'Strong grip can provoke finger joints. Stay within comfort; avoid pinch against deformity.',
  ),
  caution(
    'thumb-pinch',
    'A pinch loads the base of the thumb more than its tip. Tip bent, web open; not where the base slips or grinds.',
  ),
  caution(
    'slow-press',
    'Build the press up slowly and let go slowly; never as hard as possible, and not into a hot or swollen joint.',
  ),
  caution(
    'machine-set-up',
    'Set seat, pad and range stop for this person before the first set and write them down; check pin, discs and cable each time. At the clinic only.',
  ),
  caution(
    'neck-pressure',
    'Rule out neck instability first, above all in rheumatoid arthritis. No movement, light pressure only.',
  ),
];
