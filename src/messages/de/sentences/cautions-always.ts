/** What every prescription carries, what nobody has checked, and limits. */
import type { AlwaysCautionId, UncheckedThing } from '#core/prescribing/cautions/ids.ts';
import type { LimitedBy } from '#core/prescribing/cautions/patient-caution.ts';

export const alwaysCautions = {
  'clinician-decides':
    'Ihre Physiotherapeutin oder Ihr Physiotherapeut und die Regeln an Ihrem Wohnort gehen vor. Weichen sie von dieser Seite ab, folgen Sie ihnen.',
  'stop-signs':
    'Hören Sie auf und wählen Sie den Notruf bei: Schmerz in der Brust, Atemnot, Ohnmacht, sehr starkem Kopfschmerz oder verändertem Sehen. Ebenso, wenn Sie zwischen den Beinen nichts mehr fühlen oder die Kontrolle über Blase oder Darm verlieren.',
  'same-day-signs':
    'Hören Sie auf und rufen Sie uns noch am selben Tag an bei: einem heißen, geschwollenen Gelenk, einer Wade, die schmerzt oder anschwillt, Urin so dunkel wie Tee oder Fieber. Ebenso, wenn ein Arm oder Bein schwach wird oder nicht mehr trägt, oder wenn Sie stürzen und sich verletzen.',
} as const satisfies Readonly<Record<AlwaysCautionId, string>>;

export const unchecked = {
  'not-checked':
    'Das hat niemand geprüft: {things}. Macht Ihnen etwas davon Sorgen, fragen Sie, bevor Sie beginnen.',
  clots: 'Blutgerinnsel ohne Anzeichen',
  'heart-under-effort': 'Ihr Herz bei Anstrengung',
  'bone-strength': 'wie fest Ihre Knochen sind',
  'movement-at-home': 'wie Sie sich zu Hause bewegen',
  'health-questions': 'Ihre Antworten zu Ihrer Gesundheit',
  'blood-pressure': 'Ihr Blutdruck',
  'vessels-by-imaging': 'die Blutgefäße von innen',
  'ankle-brachial-index': 'die Durchblutung Ihres Fußes',
  'wrap-pressure': 'wie stark die elastische Binde drückt',
} as const satisfies Readonly<Record<UncheckedThing | 'not-checked', string>>;

export const limits = {
  'weight-bearing':
    'Für {joint:your-accusative} gilt eine Grenze: wie viel Gewicht darauf kommt. Halten Sie sie ein, wie {author} es Ihnen gesagt hat.',
  range:
    'Für {joint:your-accusative} gilt eine Grenze: wie weit die Bewegung geht. Halten Sie sie ein, wie {author} es Ihnen gesagt hat.',
  'load-limit':
    'Für {joint:your-accusative} gilt eine Grenze: wie schwer die Last ist. Halten Sie sie ein, wie {author} es Ihnen gesagt hat.',
  'load-limit-kg':
    'Für {joint:your-accusative} gilt eine Grenze: höchstens {kg} kg Last. Halten Sie sie ein, wie {author} es Ihnen gesagt hat.',
  'load-limit-kg-none':
    'Für {joint:your-accusative} gilt eine Grenze: höchstens {kg} kg Last, wie {author} es Ihnen gesagt hat. Diese Übung geht ohne Gewicht: Nehmen Sie keines dazu.',
  'no-impact':
    'Für {joint:your-accusative} gilt eine Grenze: Stöße. Halten Sie sie ein, wie {author} es Ihnen gesagt hat.',
  'bears-none':
    'Belasten Sie {joint:your-accusative} gar nicht mit Ihrem Gewicht, wie {author} es Ihnen gesagt hat.',
  'bears-touch':
    'Belasten Sie {joint:your-accusative} fast nicht: berühren ja, tragen nein, wie {author} es Ihnen gesagt hat.',
  'bears-partial':
    'Belasten Sie {joint:your-accusative} mit höchstens {kg} kg Ihres Gewichts, wie {author} es Ihnen gesagt hat.',
  'bears-as-tolerated':
    'Belasten Sie {joint:your-accusative} nur so weit, wie es gut geht. Das hat {author} so festgelegt.',
} as const satisfies Readonly<Record<LimitedBy, string>>;
