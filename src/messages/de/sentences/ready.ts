/** Sentences a clinician may start a message to a patient from. */

import type { ready as english } from '#messages/en/sentences/ready.ts';
import type { Same } from '#messages/sentence.ts';

export const ready = {
  stay: 'Bleiben Sie bei dem, was Sie jetzt tun. Ich habe Ihre Antworten angesehen.',
  less: 'Machen Sie nächstes Mal etwas weniger. Ihr Gelenk tat mehr weh, als es für Sie üblich ist.',
  harder:
    'Sie können die nächste schwerere Übung versuchen. Sagen Sie uns am Morgen, wie es dem Gelenk geht.',
  'stop-ring':
    'Machen Sie vorerst keine Übungen und rufen Sie uns an. Wir möchten zuerst mit Ihnen sprechen.',
  answers:
    'Wir haben seit einigen Tagen keine Antworten am Morgen. Sagen Sie uns, wie es dem Gelenk geht, oder rufen Sie an, wenn etwas nicht stimmt.',
  'pause-over':
    'Sie können mit dem, was auf Ihrer Seite steht, wieder anfangen. Hören Sie auf und rufen Sie an, wenn es schlimmer wird.',
  review: 'Wir sehen es uns zusammen an, wenn Sie das nächste Mal kommen.',
  measure:
    'Wir möchten noch einmal messen, wie stark Sie sind. Bringen Sie Schuhe mit, in denen Sie gut gehen können.',
} as const satisfies Same<typeof english>;
