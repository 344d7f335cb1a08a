/** Cautions that go with an exercise whoever does it. Common practice unless a source key is named. */
import type { Caution } from '../caution.ts';

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
];

export const cautionById = (id: string): Caution | undefined =>
  exerciseCautions.find((entry) => entry.id === id);
