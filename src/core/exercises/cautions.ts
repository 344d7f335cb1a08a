/** Cautions that go with an exercise whoever does it. Common practice unless a source key is named. */
import type { Caution } from '../prescribing/cautions/caution.ts';

const caution = (id: string, text: string, patientText: string): Caution => ({
  id,
  text,
  patientText,
  from: 'exercise',
  support: 'common-practice',
});

export const exerciseCautions: readonly Caution[] = [
  caution(
    'steady-seat',
    'Seat must not slide or tip; put it against a wall. Check the height against the prescription.',
    'Put the chair against a wall so that it cannot slide.',
  ),
  caution(
    'fall-risk-standing',
    'Balance is part of the task. Provide a firm hand hold; reconsider with falls, dizziness or neuropathy.',
    'Stand next to something firm that you can hold.',
  ),
  caution(
    'wrist-load',
    'Wrist bears load in extension. Offer handles or fists where wrist or hand joints are sore.',
    'If your wrists hurt, stop and tell your physiotherapist.',
  ),
  caution(
    'surface-slip',
    'Hands or feet can slide. The support must be fixed and dry.',
    'Use a firm, dry place that cannot move. Wear shoes that grip.',
  ),
  caution(
    'breath-holding',
    'No breath holding: it raises blood pressure during effort.',
    'Keep breathing. Do not hold your breath.',
  ),
  caution(
    'floor-transfer',
    'Needs getting down to and up from the floor or bed. Check the transfer first.',
    'Only do this if you can get down and up again. A bed is fine.',
  ),
  caution(
    'band-snap',
    'Check the band for nicks and the anchor before each session; keep the line of the band off the face.',
    'Look at the band for cuts first. Do not use a damaged band. Keep it away from your face.',
  ),
  caution(
    'anchor-strength',
    'The anchor carries a large share of body weight. Test it before the first session.',
    'Pull hard on the handles to test them before you lean back.',
  ),
  caution(
    'overhead-arm',
    'Overhead range. Limit the range with shoulder impingement, instability or repair.',
    'Only lift as high as your shoulder lets you.',
  ),
  caution(
    'weight-drop',
    'A dropped weight can injure; grip may be weak in hand arthritis. Offer a cuff instead.',
    'If your grip is weak, ask for a strap-on weight.',
  ),
  caution(
    'hip-bend-limit',
    'Deep hip flexion. Keep to the surgeon’s limits after hip replacement.',
    'If you have a new hip, keep to the limits you were given.',
  ),
  caution(
    'knee-end-range',
    'A weight loads the knee most when it is straight. Shorten the range where the kneecap joint is sore.',
    'If the front of your knee hurts, do not straighten it all the way.',
  ),
  caution(
    'knee-bend-pain',
    'Long holds at a bent knee load the kneecap joint. Choose the angle by pain.',
    'Stay higher if your knee hurts.',
  ),
  caution(
    'grip-strain',
    'Needs a firm grip. Use wide handles or a loop where finger joints are sore.',
    'If your fingers hurt, ask for a wide handle or a loop.',
  ),
  caution(
    'low-back-bend',
    'Forward lean loads the low back. Keep the trunk straight; reconsider with osteoporosis or fracture of the spine.',
    'Keep your back straight. Do not round it.',
  ),
  caution(
    'low-back-arch',
    'End-range extension can provoke low-back or leg pain. Limit the height.',
    'Lift only as high as your back lets you.',
  ),
  caution(
    'side-lying-hip',
    'Pressure on the outer hip in side lying. Pad it, or choose standing.',
    'Put a pillow under your hip if it is sore.',
  ),
  caution(
    'front-lying',
    'Lying on the front may not suit neck, chest, belly or breathing. Offer another position.',
    'If lying on your front is hard, stop and ask.',
  ),
  caution(
    'toe-joint',
    'Full weight on the big-toe joint. Limit the height where it is stiff or sore.',
    'Rise less high if your big toe hurts.',
  ),
  caution(
    'kneeling',
    'Direct pressure on the front of the knee. Pad it; avoid after recent knee surgery or with bursitis.',
    'Use a thick, soft mat under your knees.',
  ),
  caution(
    'head-low',
    'Head below the hips raises pressure in head and eyes. Avoid with uncontrolled blood pressure or eye disease.',
    'Stop if you feel dizzy or your head throbs.',
  ),
  caution(
    'hand-joint-pain',
    'Strong grip can provoke finger joints. Stay within comfort; avoid pinch against deformity.',
    'Do not squeeze into pain.',
  ),
  caution(
    'neck-pressure',
    'Rule out neck instability first, above all in rheumatoid arthritis. No movement, light pressure only.',
    'Press lightly. Stop if your arms tingle or you feel dizzy, and tell us.',
  ),
];
