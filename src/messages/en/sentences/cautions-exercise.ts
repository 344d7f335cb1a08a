/** What to mind with an exercise, whoever does it. */
import type { ExerciseCautionId } from '#core/prescribing/cautions/ids.ts';

export const exerciseCautions = {
  'steady-seat': 'Put the chair against a wall so that it cannot slide.',
  'fall-risk-standing': 'Stand next to something firm that you can hold.',
  'wrist-load': 'If your wrists hurt, stop and tell your physiotherapist.',
  'surface-slip': 'Use a firm, dry place that cannot move. Wear shoes that grip.',
  'breath-holding': 'Keep breathing. Do not hold your breath.',
  'floor-transfer': 'Only do this if you can get down and up again. A bed is fine.',
  'band-snap': 'Look at the band for cuts first. Do not use a damaged band. Keep it away from your face.',
  'anchor-strength': 'Pull hard on the handles to test them before you lean back.',
  'overhead-arm': 'Only lift as high as your shoulder lets you.',
  'weight-drop': 'If your grip is weak, ask for a strap-on weight.',
  'hip-bend-limit': 'If you have a new hip, keep to the limits you were given.',
  'knee-end-range': 'If the front of your knee hurts, do not straighten it all the way.',
  'knee-bend-pain': 'Do not go so low if your knee hurts.',
  'grip-strain': 'If your fingers hurt, ask for a wide handle or a loop.',
  'low-back-bend': 'Bend at your hips and keep your back long.',
  'low-back-arch': 'Lift only as high as your back lets you.',
  'side-lying-hip': 'Put a pillow under your hip if it is sore.',
  'front-lying': 'If lying on your front is hard, stop and ask.',
  'toe-joint': 'Rise less high if your big toe hurts.',
  kneeling: 'Use a thick, soft mat under your knees.',
  'head-low': 'Stop if you feel dizzy or your head throbs.',
  'hand-joint-pain': 'Do not squeeze so hard that it hurts.',
  'neck-pressure': 'Press lightly. Stop if your arms tingle or you feel dizzy, and tell us.',
} as const satisfies Readonly<Record<ExerciseCautionId, string>>;
