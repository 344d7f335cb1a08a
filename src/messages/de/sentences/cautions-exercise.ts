/** What to mind with an exercise, whoever does it. */
import type { ExerciseCautionId } from '#core/prescribing/cautions/ids.ts';

export const exerciseCautions = {
  'steady-seat': 'Stellen Sie den Stuhl an eine Wand, damit er nicht wegrutschen kann.',
  'fall-risk-standing': 'Stellen Sie sich neben etwas Festes, an dem Sie sich festhalten können.',
  'wrist-load':
    'Schmerzen die Handgelenke, hören Sie auf und sagen Sie es Ihrer Physiotherapeutin oder Ihrem Physiotherapeuten.',
  'surface-slip':
    'Nehmen Sie eine feste, trockene Stelle, die sich nicht bewegen kann. Tragen Sie Schuhe, die nicht rutschen.',
  'breath-holding': 'Atmen Sie weiter. Halten Sie nicht die Luft an.',
  'floor-transfer': 'Machen Sie das nur, wenn Sie auf den Boden und wieder hoch kommen. Ein Bett geht auch.',
  'band-snap':
    'Sehen Sie zuerst nach, ob das Band Risse hat. Nehmen Sie kein beschädigtes Band. Halten Sie es vom Gesicht fern.',
  'anchor-strength': 'Ziehen Sie zur Probe kräftig an den Griffen, bevor Sie sich zurücklehnen.',
  'overhead-arm': 'Heben Sie nur so hoch, wie die Schulter es zulässt.',
  'weight-drop': 'Ist Ihr Griff schwach, fragen Sie nach einem Gewicht zum Anschnallen.',
  'hip-bend-limit': 'Haben Sie eine neue Hüfte, halten Sie die Grenzen ein, die Ihnen gesagt wurden.',
  'knee-end-range': 'Schmerzt das Knie vorn, strecken Sie es nicht ganz durch.',
  'knee-bend-pain': 'Gehen Sie nicht so tief, wenn das Knie schmerzt.',
  'grip-strain': 'Schmerzen die Finger, fragen Sie nach einem dicken Griff oder einer Schlaufe.',
  'low-back-bend': 'Beugen Sie sich in der Hüfte und halten Sie den Rücken lang.',
  'low-back-arch': 'Heben Sie nur so hoch, wie der Rücken es zulässt.',
  'side-lying-hip': 'Legen Sie ein Kissen unter die Hüfte, wenn sie weh tut.',
  'front-lying': 'Fällt Ihnen die Bauchlage schwer, hören Sie auf und fragen Sie uns.',
  'toe-joint': 'Heben Sie die Ferse weniger hoch, wenn der große Zeh weh tut.',
  kneeling: 'Legen Sie eine dicke, weiche Matte unter die Knie.',
  'head-low': 'Hören Sie auf, wenn Ihnen schwindlig wird oder der Kopf pocht.',
  'hand-joint-pain': 'Drücken Sie nicht so fest, dass es weh tut.',
  'thumb-pinch':
    'Halten Sie den Daumen rund, wie um eine Tasse. Hören Sie auf, wenn er unten weh tut oder knirscht.',
  'slow-press': 'Drücken Sie langsam und lassen Sie langsam locker. Drücken Sie nicht, so fest Sie können.',
  'machine-set-up': 'Machen Sie das nur in der Praxis. Wir stellen Sitz und Gewicht zuerst für Sie ein.',
  'neck-pressure':
    'Drücken Sie nur leicht. Kribbeln die Arme oder wird Ihnen schwindlig: Hören Sie auf und sagen Sie es uns.',
} as const satisfies Readonly<Record<ExerciseCautionId, string>>;
