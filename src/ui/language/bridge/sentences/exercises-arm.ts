/** Exercises for elbow, wrist and hand, in German. */
import type { Sentences } from '../translator.ts';

export const armExercises: Sentences = {
  'Curl, sitting': 'Ellbogen beugen im Sitzen',
  'Sit tall. Let your arm hang with the weight.':
    'Sitzen Sie aufrecht. Lassen Sie den Arm mit dem Gewicht hängen.',
  'Bend your elbow and lift the weight.': 'Beugen Sie den Ellbogen und heben Sie das Gewicht.',
  'Curl, sitting, 1 kg in the hand': 'Ellbogen beugen im Sitzen, 1 kg in der Hand',
  'Curl, sitting, 2 kg in the hand': 'Ellbogen beugen im Sitzen, 2 kg in der Hand',
  'Straighten the elbow overhead': 'Ellbogen über dem Kopf strecken',
  'Sit tall. Point your elbow to the ceiling.': 'Sitzen Sie aufrecht. Der Ellbogen zeigt zur Decke.',
  'Let the hand come down behind your head.': 'Lassen Sie die Hand hinter dem Kopf herunter.',
  'Straighten your elbow.': 'Strecken Sie den Ellbogen.',
  'Straighten the elbow overhead, 1 kg in the hand': 'Ellbogen über dem Kopf strecken, 1 kg in der Hand',
  'Bend the elbow against a band': 'Ellbogen gegen ein Band beugen',
  'Put your foot on the band.': 'Stellen Sie den Fuß auf das Band.',
  'Hold the end in your hand.': 'Halten Sie das Ende in der Hand.',
  'Press a band down': 'Band nach unten drücken',
  'Keep your elbow at your side.': 'Der Ellbogen bleibt am Körper.',
  'Press your hand down until the arm is straight.':
    'Drücken Sie die Hand nach unten, bis der Arm gestreckt ist.',
  'Bend the wrist, palm up': 'Handgelenk beugen, Handfläche nach oben',
  'Rest your forearm on a table, palm up.': 'Legen Sie den Unterarm auf einen Tisch, Handfläche nach oben.',
  'Let the hand with the weight hang over the edge.':
    'Lassen Sie die Hand mit dem Gewicht über die Kante hängen.',
  'Bend your wrist up.': 'Beugen Sie das Handgelenk nach oben.',
  'Bend the wrist back, palm down': 'Handrücken heben, Handfläche nach unten',
  'Rest your forearm on a table, palm down.':
    'Legen Sie den Unterarm auf einen Tisch, Handfläche nach unten.',
  'Lift the back of your hand.': 'Heben Sie den Handrücken.',
  'Squeeze a soft ball': 'Einen weichen Ball drücken',
  'Hold a soft ball.': 'Nehmen Sie einen weichen Ball in die Hand.',
  'Squeeze it as far as is comfortable.': 'Drücken Sie ihn, so weit es angenehm ist.',
  'Hold for three slow counts.': 'Halten Sie und zählen Sie langsam bis drei.',
  'Wring a towel': 'Ein Handtuch wringen',
  'Roll up a towel.': 'Rollen Sie ein Handtuch zusammen.',
  'Wring it slowly one way, then the other.':
    'Wringen Sie es langsam in die eine Richtung, dann in die andere.',
  'Spread the fingers against a rubber ring': 'Finger gegen einen Gummiring spreizen',
  'Put the ring round your fingers and thumb.': 'Legen Sie den Ring um Finger und Daumen.',
  'Spread your fingers.': 'Spreizen Sie die Finger.',
  'Close them slowly.': 'Schließen Sie sie langsam.',
};
