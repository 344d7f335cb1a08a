/** What to mind with a method, a cuff or a wrap, and what to look at around it. */
import type { MethodCautionId, OcclusionCheckId } from '#core/prescribing/cautions/ids.ts';

export const methodCautions = {
  'variation-step':
    'Eine schwerere Form der Übung belastet das Gelenk mehr. Warten Sie ab, wie es dem Gelenk am nächsten Morgen geht, bevor Sie dabei bleiben.',
  'near-failure':
    'Gegen Ende eines Satzes soll der Muskel brennen. Das Gelenk soll dabei nicht stärker schmerzen. Sagen Sie uns, was von beidem es war.',
  'breathe-near-failure':
    'Atmen Sie weiter. Beenden Sie den Satz, wenn Sie die Übung nicht mehr sauber schaffen.',
  'occlusion-arms-legs-one-at-a-time':
    'Legen Sie Manschette oder elastische Binde nur weit oben an dem Arm oder Bein an, das Ihnen gezeigt wurde. Immer nur an einem Arm oder Bein.',
  'occlusion-pulse-and-colour':
    'Vergleichen Sie Nägel und Handfläche oder Zehennägel und Fußsohle mit der anderen Seite. Etwas röter oder dunkler ist in Ordnung. Blasser, grau, bläulich oder fleckig ist falsch: sofort abnehmen.',
  'occlusion-release':
    'Nehmen Sie Manschette oder elastische Binde sofort ab, wenn Taubheit oder Kribbeln nicht innerhalb einer Minute nachlässt. Ebenso sofort bei stechendem Schmerz, Schmerz in der Brust oder Kopfschmerz, oder wenn Sie fast ohnmächtig werden oder anders sehen.',
  'occlusion-after':
    'Dunkler Urin, ein Arm oder Bein, das anschwillt, oder viel stärkerer Muskelschmerz als sonst: Rufen Sie uns noch am selben Tag an. Ebenso, wenn Taubheit oder Kribbeln zehn Minuten nach dem Abnehmen noch da ist.',
  'occlusion-time':
    'Ist die Zeit um, nehmen Sie Manschette oder elastische Binde ab, auch wenn Sie nicht fertig sind.',
  'occlusion-evidence':
    'Diese Übung soll Ihr Gelenk schonen. Schmerzt es dabei mehr, hören Sie auf und sagen Sie es uns.',
  'wrap-pressure-unknown':
    'Niemand weiß, wie stark eine elastische Binde drückt. Wickeln Sie so fest, wie es Ihnen gezeigt wurde, und nie so, dass es weh tut.',
  'occlusion-alone':
    'Geht das Telefon aus oder wissen Sie nicht mehr, wie lange sie sitzt, nehmen Sie die Manschette ab. Sie müssen sie mit der linken und auch mit der rechten Hand abnehmen können.',
  'cuff-pressure-belongs-to-this-cuff':
    'Nehmen Sie diesen Druck nur mit dieser Manschette, an diesem Arm oder Bein, in dieser Haltung.',
} as const satisfies Readonly<Record<MethodCautionId, string>>;

export const occlusionChecks = {
  're-ask': 'Beantworten Sie die kurze Liste noch einmal. Ist etwas neu, beginnen Sie nicht.',
  'skin-before': 'Sehen Sie die Haut an. Sie muss heil und warm sein und sich normal anfühlen.',
  'pulse-before': 'Fühlen Sie den Puls dort, wo es Ihnen gezeigt wurde.',
  'pain-before-exercise': 'Tut es weh, bevor Sie sich bewegen, ist es zu fest. Lockern Sie es.',
  'pulse-during': 'Fühlen Sie in jeder Pause den Puls. Kein Puls: abnehmen.',
  'colour-during':
    'Vergleichen Sie Nägel und Handfläche oder Zehennägel und Fußsohle mit der anderen Seite. Etwas röter oder dunkler ist in Ordnung. Blasser, grau, bläulich oder fleckig: abnehmen.',
  'refill-during':
    'Drücken Sie auf einen Nagel. Die Farbe muss zurück sein, bevor Sie bis drei gezählt haben.',
  'three-scores': 'Sagen Sie, was weh tut: das Gelenk, der Muskel oder die Manschette.',
  'release-between': 'Zwischen den Übungen abnehmen, für mindestens eine Minute.',
  'colour-after':
    'Innerhalb von zehn Minuten muss der Arm oder das Bein normal aussehen und sich normal anfühlen.',
  'mornings-after':
    'Achten Sie drei Morgen lang auf die Farbe Ihres Urins. Sagen Sie es uns, wenn der Muskelschmerz sehr stark ist.',
} as const satisfies Readonly<Record<OcclusionCheckId, string>>;
