import type { Sentences } from '../translator.ts';

/**
 * What a decision means and why, in German: the sentences of the engine's table, and why an exercise rests
 * for a reason outside it. Read by nobody yet; a clinic reviews them before use.
 */
export const reasonSentences: Sentences = {
  'Your answers allow a little more, once your physiotherapist agrees.':
    'Nach Ihren Antworten geht etwas mehr, sobald Ihre Physiotherapie zustimmt.',
  'Stay where you are: do the same again next time.':
    'Bleiben Sie beim jetzigen Plan: Machen Sie nächstes Mal dasselbe.',
  'Do a little less next time.': 'Machen Sie nächstes Mal etwas weniger.',
  'Stop your exercises until we have spoken with you.':
    'Machen Sie keine Übungen mehr, bis wir mit Ihnen gesprochen haben.',
  'You can do your session as planned today.': 'Sie können heute wie geplant trainieren.',
  'Do the easier session today.': 'Machen Sie heute das leichtere Training.',
  'Rest this joint today.': 'Lassen Sie dieses Gelenk heute ruhen.',
  'No exercises today.': 'Heute keine Übungen.',
  'Stop and ask for help now. You told us of a sign that a person must look at first.':
    'Hören Sie auf und holen Sie jetzt Hilfe. Sie haben ein Zeichen genannt, das sich zuerst ein Mensch ansehen muss.',
  'Your pain was very strong, so do less and speak with us today.':
    'Ihr Schmerz war sehr stark. Machen Sie darum weniger und sprechen Sie heute mit uns.',
  'Your pain was far above your usual. Stop your exercises and speak with us today.':
    'Ihr Schmerz war viel stärker als sonst. Machen Sie keine Übungen mehr und sprechen Sie heute mit uns.',
  'Your pain went higher than we want it to go, so do a little less.':
    'Ihr Schmerz wurde stärker, als er werden soll. Machen Sie darum etwas weniger.',
  'The joint was sore before you began, so today is for the easier session.':
    'Das Gelenk tat schon vor dem Training weh. Heute ist darum das leichtere Training dran.',
  'The joint was sorer than usual before you began, so stay where you are.':
    'Das Gelenk tat schon vor dem Training mehr weh als sonst. Bleiben Sie darum beim jetzigen Plan.',
  'The joint hurt while you trained, so stay where you are.':
    'Das Gelenk tat beim Training weh. Bleiben Sie darum beim jetzigen Plan.',
  'The joint was still sorer than usual the next morning, so do a little less.':
    'Das Gelenk tat am nächsten Morgen immer noch mehr weh als sonst. Machen Sie darum etwas weniger.',
  'The joint was a little sorer than usual the next morning, so stay where you are.':
    'Das Gelenk tat am nächsten Morgen etwas mehr weh als sonst. Bleiben Sie darum beim jetzigen Plan.',
  'Two hours later the joint was clearly sorer than usual, so do a little less.':
    'Zwei Stunden später tat das Gelenk deutlich mehr weh als sonst. Machen Sie darum etwas weniger.',
  'Two hours later the joint was a little sorer than usual, so stay where you are.':
    'Zwei Stunden später tat das Gelenk etwas mehr weh als sonst. Bleiben Sie darum beim jetzigen Plan.',
  'Your mornings have been sorer than usual all week, so do a little less.':
    'Die ganze Woche tat es am Morgen mehr weh als sonst. Machen Sie darum etwas weniger.',
  'Your mornings have been a little sorer this week, so stay where you are.':
    'Diese Woche tat es am Morgen etwas mehr weh. Bleiben Sie darum beim jetzigen Plan.',
  'We are still learning how your joint usually is, so stay where you are for now.':
    'Wir lernen noch, wie es Ihrem Gelenk sonst geht. Bleiben Sie vorerst beim jetzigen Plan.',
  'It is time for us to look again at how your joint usually is.':
    'Es ist Zeit, dass wir neu ansehen, wie es Ihrem Gelenk sonst geht.',
  'Your joint has been better than before, so we want to look again before you do more.':
    'Ihrem Gelenk ging es besser als früher. Wir möchten es neu ansehen, bevor Sie mehr machen.',
  'The joint is very swollen. Rest it and speak with us today.':
    'Das Gelenk ist sehr geschwollen. Lassen Sie es ruhen und sprechen Sie heute mit uns.',
  'The joint is clearly swollen. Rest it today; afterwards do a little less.':
    'Das Gelenk ist deutlich geschwollen. Lassen Sie es heute ruhen. Machen Sie danach etwas weniger.',
  'The joint is a little swollen, so stay where you are.':
    'Das Gelenk ist ein wenig geschwollen. Bleiben Sie darum beim jetzigen Plan.',
  'There is much fluid in the joint. Rest it and speak with us today.':
    'Im Gelenk ist viel Flüssigkeit. Lassen Sie es ruhen und sprechen Sie heute mit uns.',
  'The fluid in the joint has not gone down. Rest it and speak with us today.':
    'Die Flüssigkeit im Gelenk ist nicht weniger geworden. Lassen Sie es ruhen und sprechen Sie heute mit uns.',
  'There is fluid in the joint. Rest it until it has gone down; then do a little less.':
    'Im Gelenk ist Flüssigkeit. Lassen Sie es ruhen, bis sie zurückgegangen ist. Machen Sie dann etwas weniger.',
  'There is a little fluid in the joint, so stay where you are.':
    'Im Gelenk ist ein wenig Flüssigkeit. Bleiben Sie darum beim jetzigen Plan.',
  'The joint stayed stiff far longer than usual, so do a little less.':
    'Das Gelenk blieb viel länger steif als sonst. Machen Sie darum etwas weniger.',
  'The joint stayed stiff longer than usual, so stay where you are.':
    'Das Gelenk blieb länger steif als sonst. Bleiben Sie darum beim jetzigen Plan.',
  'This flare has lasted longer than most. Rest the joint until we have spoken.':
    'Dieser Schub dauert länger als die meisten. Lassen Sie das Gelenk ruhen, bis wir gesprochen haben.',
  'Your flare goes on, so do the easier session and let us know.':
    'Ihr Schub hält an. Machen Sie darum das leichtere Training und sagen Sie uns Bescheid.',
  'You are in a flare, so do the easier session until it has passed.':
    'Sie haben einen Schub. Machen Sie darum das leichtere Training, bis er vorbei ist.',
  'Your body as a whole is having a hard time, so stay where you are.':
    'Ihr Körper hat es gerade insgesamt schwer. Bleiben Sie darum beim jetzigen Plan.',
  'You had to stop early because of the joint, so do a little less.':
    'Sie mussten wegen des Gelenks früher aufhören. Machen Sie darum etwas weniger.',
  'Not all repetitions were done, so stay where you are.':
    'Nicht alle Wiederholungen wurden gemacht. Bleiben Sie darum beim jetzigen Plan.',
  'The sets were harder than planned, so stay where you are.':
    'Die Sätze waren anstrengender als geplant. Bleiben Sie darum beim jetzigen Plan.',
  'Let us see this dose done as planned a little longer before a bigger step.':
    'Wir möchten das noch etwas länger wie geplant sehen, bevor ein größerer Schritt kommt.',
  'Some sessions were missed, so stay where you are until they are regular again.':
    'Einige Trainings sind ausgefallen. Bleiben Sie beim jetzigen Plan, bis es wieder regelmäßig geht.',
  'After a break it is best to start again with a little less.':
    'Nach einer Pause fängt man am besten mit etwas weniger wieder an.',
  'We do not have all your answers yet, so stay where you are.':
    'Wir haben noch nicht alle Ihre Antworten. Bleiben Sie darum beim jetzigen Plan.',
  'Your mornings seem to be getting slowly sorer, so stay where you are.':
    'Am Morgen scheint es langsam mehr weh zu tun. Bleiben Sie darum beim jetzigen Plan.',
  'Extra pain relief can hide how the joint is, so stay where you are.':
    'Was Sie zusätzlich gegen Schmerzen nehmen, kann verdecken, wie es dem Gelenk geht. Bleiben Sie darum beim jetzigen Plan.',
  'Your treatment changed lately, so stay where you are while it settles.':
    'Ihre Behandlung hat sich kürzlich geändert. Bleiben Sie beim jetzigen Plan, bis sich das gegeben hat.',
  'You did more than planned, so stay where you are and let us talk about it.':
    'Sie haben mehr gemacht als geplant. Bleiben Sie beim jetzigen Plan und lassen Sie uns darüber sprechen.',
  'The joint gave way, so stay where you are and let us know.':
    'Das Gelenk hat nachgegeben. Bleiben Sie beim jetzigen Plan und sagen Sie uns Bescheid.',
  'Your time with us has ended. You can still read everything here.':
    'Ihre Zeit bei uns ist zu Ende. Sie können hier weiter alles lesen.',
  'You are on a break we agreed on. Nothing is planned until you are back.':
    'Sie machen eine Pause, die wir vereinbart haben. Bis Sie zurück sind, ist nichts geplant.',
  'Welcome back. Ring us first: we ask you some questions before you start again.':
    'Willkommen zurück. Rufen Sie uns zuerst an: Wir stellen Ihnen einige Fragen, bevor Sie wieder anfangen.',
  'Something has happened since you began. We ask you some questions before you go on.':
    'Seit dem Beginn ist etwas geschehen. Wir stellen Ihnen einige Fragen, bevor Sie weitermachen.',
  'You have not agreed to this exercise, or took it back. It rests until we have spoken.':
    'Sie haben dieser Übung nicht zugestimmt oder die Zustimmung zurückgenommen. Sie ruht, bis wir gesprochen haben.',
  'You took back your agreement to the cuff. The exercise with it rests until we have spoken.':
    'Sie haben Ihre Zustimmung zur Manschette zurückgenommen. Die Übung damit ruht, bis wir gesprochen haben.',
};
