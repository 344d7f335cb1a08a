/** What to mind with each way of training, and the looks at a limb under a cuff or wrap, in German. */
import type { Sentences } from '../translator.ts';

export const methodCautionSentences: Sentences = {
  'A harder version loads the joint more. See how the joint is the next morning before you trust it.':
    'Eine schwerere Fassung belastet das Gelenk mehr. Warten Sie ab, wie es dem Gelenk am nächsten Morgen geht, bevor Sie ihr trauen.',
  'The muscle should burn near the end of a set. The joint should not hurt more. Tell us which one it was.':
    'Gegen Ende eines Satzes soll der Muskel brennen. Das Gelenk soll dabei nicht stärker schmerzen. Sagen Sie uns, was von beidem es war.',
  'Keep breathing. Stop the set when you can no longer do it well.':
    'Atmen Sie weiter. Beenden Sie den Satz, wenn Sie die Übung nicht mehr sauber schaffen.',
  'Put it only high on the arm or leg you were shown, and only one limb at a time.':
    'Legen Sie Manschette oder Wickel nur hoch an dem Arm oder Bein an, das Ihnen gezeigt wurde. Immer nur an einem Arm oder Bein.',
  'Fingers or toes may turn pink or dusky. White, blue or patchy is wrong: take it off at once.':
    'Finger oder Zehen dürfen rosa oder dunkel werden. Weiß, blau oder fleckig ist falsch: sofort abnehmen.',
  'Take it off at once for numbness that does not ease in a minute, sharp pain, feeling faint, chest pain, headache or a change of sight.':
    'Nehmen Sie Manschette oder Wickel sofort ab, wenn Taubheit nicht innerhalb einer Minute nachlässt. Ebenso sofort bei stechendem Schmerz, drohender Ohnmacht, Schmerz in der Brust, Kopfschmerz oder verändertem Sehen.',
  'If your urine is dark, a limb swells, soreness is far worse than usual, or numbness lasts ten minutes after it is off, ring us the same day.':
    'Dunkler Urin, ein Arm oder Bein, das anschwillt, oder viel stärkerer Muskelschmerz als sonst: Rufen Sie uns noch am selben Tag an. Ebenso, wenn zehn Minuten nach dem Abnehmen noch etwas taub ist.',
  'When the time is up, take it off, even if you have not finished.':
    'Ist die Zeit um, nehmen Sie Manschette oder Wickel ab, auch wenn Sie nicht fertig sind.',
  'This is meant to spare your joint. If the joint hurts more, that is not part of it: stop and tell us.':
    'Das soll Ihr Gelenk schonen. Schmerzt das Gelenk mehr, gehört das nicht dazu: Hören Sie auf und sagen Sie es uns.',
  'If your phone stops or you lose count, take the cuff off. You must be able to take it off with either hand.':
    'Geht das Telefon aus oder verzählen Sie sich, nehmen Sie die Manschette ab. Sie müssen sie mit der linken und auch mit der rechten Hand abnehmen können.',
  'Nobody knows how hard a wrap presses. Wrap it to the tightness you were shown, never so that it hurts.':
    'Niemand weiß, wie stark ein Wickel drückt. Wickeln Sie so fest, wie es Ihnen gezeigt wurde, und nie so, dass es weh tut.',
  'Use this pressure only with this cuff, on this limb, in this position.':
    'Nehmen Sie diesen Druck nur mit dieser Manschette, an diesem Arm oder Bein, in dieser Haltung.',
  'Answer the short list again. If something is new, do not start.':
    'Beantworten Sie die kurze Liste noch einmal. Ist etwas neu, beginnen Sie nicht.',
  'Look at the skin. It must be whole, warm and feel normal.':
    'Sehen Sie die Haut an. Sie muss heil und warm sein und sich normal anfühlen.',
  'Feel the pulse where you were shown.': 'Fühlen Sie den Puls dort, wo es Ihnen gezeigt wurde.',
  'If it hurts before you move, it is too tight. Loosen it.':
    'Tut es weh, bevor Sie sich bewegen, ist es zu fest. Lockern Sie es.',
  'Feel the pulse in each rest. No pulse: take it off.':
    'Fühlen Sie in jeder Pause den Puls. Kein Puls: abnehmen.',
  'Pink or dusky is fine. White, blue or patchy: take it off.':
    'Rosa oder dunkel ist in Ordnung. Weiß, blau oder fleckig: abnehmen.',
  'Press a nail. Colour must be back before you have counted to three.':
    'Drücken Sie auf einen Nagel. Die Farbe muss zurück sein, bevor Sie bis drei gezählt haben.',
  'Say what hurts: the joint, the muscle or the cuff.':
    'Sagen Sie, was weh tut: das Gelenk, der Muskel oder die Manschette.',
  'Take it off between exercises, for at least one minute.':
    'Zwischen den Übungen abnehmen, für mindestens eine Minute.',
  'Within ten minutes the limb must look and feel normal.':
    'Innerhalb von zehn Minuten muss der Arm oder das Bein normal aussehen und sich normal anfühlen.',
  'For three mornings, look at the colour of your urine and tell us about very bad soreness.':
    'Sehen Sie an drei Morgen nach der Farbe des Urins. Sagen Sie es uns, wenn der Muskelschmerz sehr stark ist.',
};
