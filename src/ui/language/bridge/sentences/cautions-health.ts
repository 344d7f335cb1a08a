/** What to mind with an illness or a medicine, in German. */
import type { Sentences } from '../translator.ts';

export const healthCautionSentences: Sentences = {
  'Your doctor asked you not to exercise. Wait until a doctor says that you may.':
    'Ihr Arzt oder Ihre Ärztin hat Sie gebeten, nicht zu trainieren. Warten Sie, bis ein Arzt oder eine Ärztin es erlaubt.',
  'If chest discomfort, faintness or breathlessness comes back, stop and call emergency care.':
    'Kommen Beschwerden in der Brust, Schwäche wie vor einer Ohnmacht oder Atemnot wieder: Hören Sie auf und wählen Sie den Notruf.',
  'Do not strain or hold your breath. Ring us if you are more breathless, or your legs swell.':
    'Pressen Sie nicht und halten Sie nicht die Luft an. Rufen Sie uns an, wenn Sie schlechter Luft bekommen oder die Beine anschwellen.',
  'Measure your blood pressure before you start. If it is high, do not start, and ring us.':
    'Messen Sie vor dem Beginn den Blutdruck. Ist er hoch, beginnen Sie nicht und rufen Sie uns an.',
  'Do not exercise while you have a fever or feel ill.':
    'Trainieren Sie nicht, solange Sie Fieber haben oder sich krank fühlen.',
  'Do not strain, and keep your head up. Stop if your sight changes or your head hurts badly.':
    'Pressen Sie nicht und halten Sie den Kopf oben. Hören Sie auf, wenn sich das Sehen verändert oder der Kopf stark schmerzt.',
  'A swollen or sore calf, or sudden breathlessness, is urgent: stop and get help.':
    'Eine geschwollene oder schmerzende Wade oder plötzliche Atemnot ist dringend: Hören Sie auf und holen Sie Hilfe.',
  'Ring us the same day about a large bruise, a swollen joint or a swollen limb.':
    'Großer Bluterguss, geschwollenes Gelenk, geschwollener Arm oder geschwollenes Bein: Rufen Sie uns noch am selben Tag an.',
  'Do not put a cuff or tight band on your arms or legs.':
    'Legen Sie keine Manschette und kein enges Band an Arme oder Beine.',
  'Drink enough and rest well between sets. Stop if a limb or your chest hurts.':
    'Trinken Sie genug und ruhen Sie sich zwischen den Sätzen gut aus. Hören Sie auf, wenn Arm, Bein oder Brust schmerzen.',
  'Rest when the limb cramps. A cold, pale limb that hurts at rest is urgent: get help.':
    'Machen Sie Pause, wenn Arm oder Bein krampft. Ist der Arm oder das Bein kalt und blass und schmerzt in Ruhe, ist das dringend: Holen Sie Hilfe.',
  'Put nothing tight on the limb with your fistula or port.':
    'Legen Sie nichts Enges an den Arm oder das Bein mit Ihrem Shunt oder Port.',
  'Put no cuff on that limb. Tell us if it feels heavier or swells.':
    'Legen Sie keine Manschette an diesen Arm oder dieses Bein. Sagen Sie es uns, wenn es sich schwerer anfühlt oder anschwillt.',
  'Stop and ring us if a vein turns red, warm or sore.':
    'Hören Sie auf und rufen Sie uns an, wenn eine Vene rot oder warm wird oder schmerzt.',
  'Do not exercise. Get medical help today for the calf.':
    'Trainieren Sie nicht. Holen Sie heute ärztliche Hilfe für die Wade.',
  'Keep hands and feet warm. Stop if fingers or toes turn white or blue.':
    'Halten Sie Hände und Füße warm. Hören Sie auf, wenn Finger oder Zehen weiß oder blau werden.',
  'Ring us about new skin spots, or new pain or numbness in a limb.':
    'Rufen Sie uns an bei neuen Flecken auf der Haut, neuem Schmerz oder neuer Taubheit in Arm oder Bein.',
  'Ring us the same day if a calf hurts or swells. Call for help if you cannot get your breath.':
    'Rufen Sie uns noch am selben Tag an, wenn eine Wade schmerzt oder anschwillt. Rufen Sie Hilfe, wenn Sie keine Luft bekommen.',
  'Stop and ring your maternity team for bleeding, dizziness or cramps.':
    'Bei Blutung, Schwindel oder Krämpfen: Hören Sie auf und rufen Sie Ihre Hebamme oder Frauenarztpraxis an.',
  'Keep to what your surgeon allowed. Ring us the same day if a calf hurts or swells.':
    'Halten Sie sich an das, was nach der Operation ärztlich erlaubt wurde. Rufen Sie uns noch am selben Tag an, wenn eine Wade schmerzt oder anschwillt.',
  'Stop and ring us about new pain in a bone. Keep to what your cancer team allows.':
    'Hören Sie auf und rufen Sie uns an, wenn ein Knochen neu schmerzt. Halten Sie sich an das, was das Team Ihrer Krebsbehandlung erlaubt.',
  'Check your sugar before you start, and look at your feet afterwards.':
    'Messen Sie vor dem Beginn den Blutzucker und sehen Sie danach Ihre Füße an.',
  'Dark urine or very bad soreness is urgent: ring us the same day.':
    'Dunkler Urin oder sehr starker Muskelschmerz ist dringend: Rufen Sie uns noch am selben Tag an.',
  'Do this with somebody beside you who looks at your skin and its colour.':
    'Machen Sie das mit jemandem an Ihrer Seite, der auf Ihre Haut und deren Farbe achtet.',
  'Tell us about every change of your medicines. Do not stop one by yourself.':
    'Sagen Sie uns jede Änderung Ihrer Medikamente. Setzen Sie keines selbst ab.',
  'Talk to your clinician about your weight and eating. We set no target for you.':
    'Sprechen Sie mit Ihrer Fachperson über Gewicht und Essen. Wir geben Ihnen kein Ziel vor.',
  'Keep pressure off the sore place. Ring us the same day if redness spreads or you have a fever.':
    'Halten Sie Druck von der wunden Stelle fern. Rufen Sie uns noch am selben Tag an, wenn die Rötung größer wird oder Sie Fieber haben.',
  'Do not put a cuff there until we have looked at it.':
    'Legen Sie dort keine Manschette an, bis wir die Stelle angesehen haben.',
  'Do not load the hot joint. Have a doctor look at it.':
    'Belasten Sie das heiße Gelenk nicht. Lassen Sie es ärztlich ansehen.',
  'In a flare, do less and tell us. Ring us the same day if a calf hurts or swells.':
    'Machen Sie in einem Schub weniger und sagen Sie es uns. Rufen Sie uns noch am selben Tag an, wenn eine Wade schmerzt oder anschwillt.',
  'Keep your neck at ease. Tingling, clumsy hands or unsteady legs are urgent: ring us.':
    'Lassen Sie den Nacken locker. Kribbeln, ungeschickte Hände oder wacklige Beine sind dringend: Rufen Sie uns an.',
  'Do not bend or twist your back under load. Stop and ring us if your back hurts suddenly.':
    'Beugen und drehen Sie den Rücken nicht unter Last. Schmerzt der Rücken plötzlich: Hören Sie auf und rufen Sie uns an.',
  'You take a blood thinner. Tell us about new bruises, and get help the same day after a fall or a knock on the head.':
    'Sie nehmen einen Blutverdünner. Sagen Sie uns, wenn Sie neue blaue Flecken haben. Holen Sie nach einem Sturz oder einem Stoß gegen den Kopf noch am selben Tag Hilfe.',
  'Your hormone medicine can make clots more likely. Ring us the same day if a calf hurts or swells.':
    'Ihr Hormonmittel kann Blutgerinnsel wahrscheinlicher machen. Rufen Sie uns noch am selben Tag an, wenn eine Wade schmerzt oder anschwillt.',
  'Your hormone medicine can make clots more likely. Add load in small steps only.':
    'Ihr Hormonmittel kann Blutgerinnsel wahrscheinlicher machen. Steigern Sie die Last nur in kleinen Schritten.',
  'Your tablet can make you dizzy after a set. Sit down, and get up slowly.':
    'Ihre Tablette kann Sie nach einem Satz schwindlig machen. Setzen Sie sich, und stehen Sie langsam auf.',
  'Measure your sugar before you start, and keep something sweet beside you.':
    'Messen Sie vor dem Beginn den Blutzucker und legen Sie etwas Süßes neben sich.',
  'Your skin and bones may be fragile. Pad straps, and look at the skin afterwards.':
    'Ihre Haut und Ihre Knochen können leichter verletzt werden. Polstern Sie Gurte und sehen Sie danach die Haut an.',
  'Ring us the same day if a calf hurts or swells, or if you have a fever.':
    'Rufen Sie uns noch am selben Tag an, wenn eine Wade schmerzt oder anschwillt oder Sie Fieber haben.',
  'Do not exercise with a fever or an infected wound. Ring us.':
    'Trainieren Sie nicht mit Fieber oder einer entzündeten Wunde. Rufen Sie uns an.',
  'No jerky moves. Stop and ring us if a tendon, such as the heel cord, hurts suddenly.':
    'Keine ruckartigen Bewegungen. Schmerzt plötzlich eine Sehne, zum Beispiel die Achillessehne: Hören Sie auf und rufen Sie uns an.',
};
