/**
 * Sentences a clinician may start a message to a patient from, in two languages. Our own wording, in plain
 * words; nobody has reviewed them, and whoever sends one has read it. They stay off the phone.
 */
export interface ReadySentence {
  readonly key: string;
  /** What it is for, as the clinician chooses it. */
  readonly about: string;
  readonly en: string;
  readonly de: string;
  /** Who approved the wording; null until someone has. */
  readonly reviewer: string | null;
}

const ready = (key: string, about: string, en: string, de: string): ReadySentence => ({
  key,
  about,
  en,
  de,
  reviewer: null,
});

export const readySentences: readonly ReadySentence[] = [
  ready(
    'stay',
    'Stay with the same dose',
    'Stay with what you are doing now. I have looked at your answers.',
    'Bleiben Sie bei dem, was Sie jetzt tun. Ich habe Ihre Antworten angesehen.',
  ),
  ready(
    'less',
    'Do a little less',
    'Do a little less next time. Your joint was sorer than usual for you.',
    'Machen Sie nächstes Mal etwas weniger. Ihr Gelenk tat mehr weh, als es für Sie üblich ist.',
  ),
  ready(
    'harder',
    'A harder version comes next',
    'You can try the next harder version. Tell us in the morning how the joint is.',
    'Sie können die nächste schwerere Übung versuchen. Sagen Sie uns am Morgen, wie es dem Gelenk geht.',
  ),
  ready(
    'stop-ring',
    'Stop and ring',
    'Stop your exercises for now, and ring us. We would like to talk first.',
    'Machen Sie vorerst keine Übungen und rufen Sie uns an. Wir möchten zuerst mit Ihnen sprechen.',
  ),
  ready(
    'answers',
    'Mornings without answers',
    'We have not had your morning answers for some days. Tell us how the joint is, or ring if something is wrong.',
    'Wir haben seit einigen Tagen keine Antworten am Morgen. Sagen Sie uns, wie es dem Gelenk geht, oder rufen Sie an, wenn etwas nicht stimmt.',
  ),
  ready(
    'pause-over',
    'The pause is over',
    'You can start again with the dose on your page. Stop and ring if the joint gets worse.',
    'Sie können mit dem, was auf Ihrer Seite steht, wieder anfangen. Hören Sie auf und rufen Sie an, wenn es schlimmer wird.',
  ),
  ready(
    'review',
    'About the next visit',
    'We will look at it together when you come next.',
    'Wir sehen es uns zusammen an, wenn Sie das nächste Mal kommen.',
  ),
  ready(
    'measure',
    'Something is to be measured again',
    'We would like to measure again how strong you are. Bring shoes you walk well in.',
    'Wir möchten noch einmal messen, wie stark Sie sind. Bringen Sie Schuhe mit, in denen Sie gut gehen.',
  ),
];
