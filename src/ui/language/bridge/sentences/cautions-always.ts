/** What every prescription carries, what nobody checked, and limits, in German. */
import type { Sentences } from '../translator.ts';

export const alwaysSentences: Sentences = {
  'Your clinician and the rules where you live come first. If they differ from this page, follow them.':
    'Ihre Fachperson und die Regeln an Ihrem Wohnort gehen vor. Weichen sie von dieser Seite ab, folgen Sie ihnen.',
  'Stop and call emergency care if you have chest pain, cannot get your breath, faint, have a very bad headache or a change in your sight, or lose feeling between the legs or control of bladder or bowel.':
    'Hören Sie auf und wählen Sie den Notruf bei: Schmerz in der Brust, Atemnot, Ohnmacht, sehr starkem Kopfschmerz oder verändertem Sehen. Ebenso, wenn Sie zwischen den Beinen nichts mehr fühlen oder die Kontrolle über Blase oder Darm verlieren.',
  'Stop and ring us the same day if a joint turns hot and swollen, a calf hurts or swells, your urine is dark like tea, you have a fever, a limb turns weak or cannot take weight, or you fall and hurt yourself.':
    'Hören Sie auf und rufen Sie uns noch am selben Tag an bei: einem heißen, geschwollenen Gelenk, einer Wade, die schmerzt oder anschwillt, Urin so dunkel wie Tee oder Fieber. Ebenso, wenn ein Arm oder Bein schwach wird oder nicht mehr trägt, oder wenn Sie stürzen und sich verletzen.',
  'Nobody has checked: {=things}. If you worry about one of these, ask before you start.':
    'Das hat niemand geprüft: {=things}. Macht Ihnen etwas davon Sorgen, fragen Sie, bevor Sie beginnen.',
  'blood clots that give no signs': 'Blutgerinnsel ohne Anzeichen',
  'your heart during effort': 'Ihr Herz bei Anstrengung',
  'how strong your bones are': 'wie fest Ihre Knochen sind',
  'how you move at home': 'wie Sie sich zu Hause bewegen',
  'your answers about your health': 'Ihre Antworten zu Ihrer Gesundheit',
  'your blood pressure': 'Ihr Blutdruck',
  'the blood vessels from inside': 'die Blutgefäße von innen',
  'the blood flow to your foot': 'die Durchblutung Ihres Fußes',
  'how hard the wrap presses': 'wie stark der Wickel drückt',
  'There is a limit for your {=joint}: weight-bearing. Keep to it as {author} told you.':
    'Für dieses Gelenk gilt eine Grenze ({=joint}): wie viel Gewicht darauf kommt. Halten Sie sie ein, wie {author} es Ihnen gesagt hat.',
  'There is a limit for your {=joint}: range of movement. Keep to it as {author} told you.':
    'Für dieses Gelenk gilt eine Grenze ({=joint}): wie weit Sie es bewegen. Halten Sie sie ein, wie {author} es Ihnen gesagt hat.',
  'There is a limit for your {=joint}: load. Keep to it as {author} told you.':
    'Für dieses Gelenk gilt eine Grenze ({=joint}): wie schwer die Last ist. Halten Sie sie ein, wie {author} es Ihnen gesagt hat.',
  'There is a limit for your {=joint}: impact. Keep to it as {author} told you.':
    'Für dieses Gelenk gilt eine Grenze ({=joint}): Stöße. Halten Sie sie ein, wie {author} es Ihnen gesagt hat.',
};
