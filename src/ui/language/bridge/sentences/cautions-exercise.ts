/** What to mind with an exercise, whoever does it, in German. */
import type { Sentences } from '../translator.ts';

export const exerciseCautionSentences: Sentences = {
  'Put the chair against a wall so that it cannot slide.':
    'Stellen Sie den Stuhl an eine Wand, damit er nicht wegrutschen kann.',
  'Stand next to something firm that you can hold.':
    'Stellen Sie sich neben etwas Festes, an dem Sie sich festhalten können.',
  'If your wrists hurt, stop and tell your physiotherapist.':
    'Schmerzen die Handgelenke, hören Sie auf und sagen Sie es in der Physiotherapie.',
  'Use a firm, dry place that cannot move. Wear shoes that grip.':
    'Nehmen Sie eine feste, trockene Stelle, die sich nicht bewegen kann. Tragen Sie Schuhe, die nicht rutschen.',
  'Keep breathing. Do not hold your breath.': 'Atmen Sie weiter. Halten Sie nicht die Luft an.',
  'Only do this if you can get down and up again. A bed is fine.':
    'Machen Sie das nur, wenn Sie herunter- und wieder hochkommen. Ein Bett geht auch.',
  'Look at the band for cuts first. Do not use a damaged band. Keep it away from your face.':
    'Sehen Sie zuerst nach, ob das Band Risse hat. Nehmen Sie kein beschädigtes Band. Halten Sie es vom Gesicht fern.',
  'Pull hard on the handles to test them before you lean back.':
    'Ziehen Sie zur Probe kräftig an den Griffen, bevor Sie sich zurücklehnen.',
  'Only lift as high as your shoulder lets you.': 'Heben Sie nur so hoch, wie die Schulter es zulässt.',
  'If your grip is weak, ask for a strap-on weight.':
    'Ist Ihr Griff schwach, fragen Sie nach einem Gewicht zum Anschnallen.',
  'If you have a new hip, keep to the limits you were given.':
    'Haben Sie eine neue Hüfte, halten Sie die Grenzen ein, die Ihnen gesagt wurden.',
  'If the front of your knee hurts, do not straighten it all the way.':
    'Schmerzt das Knie vorn, strecken Sie es nicht ganz durch.',
  'Stay higher if your knee hurts.': 'Bleiben Sie höher, wenn das Knie schmerzt.',
  'If your fingers hurt, ask for a wide handle or a loop.':
    'Schmerzen die Finger, fragen Sie nach einem dicken Griff oder einer Schlaufe.',
  'Keep your back straight. Do not round it.': 'Halten Sie den Rücken gerade. Machen Sie ihn nicht rund.',
  'Lift only as high as your back lets you.': 'Heben Sie nur so hoch, wie der Rücken es zulässt.',
  'Put a pillow under your hip if it is sore.': 'Legen Sie ein Kissen unter die Hüfte, wenn sie weh tut.',
  'If lying on your front is hard, stop and ask.':
    'Fällt Ihnen die Bauchlage schwer, hören Sie auf und fragen Sie.',
  'Rise less high if your big toe hurts.': 'Gehen Sie weniger hoch, wenn der große Zeh weh tut.',
  'Use a thick, soft mat under your knees.': 'Legen Sie eine dicke, weiche Matte unter die Knie.',
  'Stop if you feel dizzy or your head throbs.':
    'Hören Sie auf, wenn Ihnen schwindlig wird oder der Kopf pocht.',
  'Do not squeeze into pain.': 'Drücken Sie nicht in den Schmerz hinein.',
  'Press lightly. Stop if your arms tingle or you feel dizzy, and tell us.':
    'Drücken Sie nur leicht. Kribbeln die Arme oder wird Ihnen schwindlig: Hören Sie auf und sagen Sie es uns.',
};
