/** Exercises for chest, shoulder and back, in German. */
import type { Sentences } from '../translator.ts';

export const chestAndBackExercises: Sentences = {
  'Push-up against the wall, feet near': 'Liegestütz an der Wand, Füße nah',
  'Stand at arm’s length from the wall.': 'Stellen Sie sich eine Armlänge vor die Wand.',
  'Step back by half a foot length and a bit.': 'Gehen Sie gut eine halbe Fußlänge zurück.',
  'Put your hands on the wall at shoulder height.': 'Legen Sie die Hände in Schulterhöhe an die Wand.',
  'Bend your elbows, then push away.': 'Beugen Sie die Ellbogen, dann drücken Sie sich weg.',
  'Push-up against the wall': 'Liegestütz an der Wand',
  'Step back by one foot length.': 'Gehen Sie eine Fußlänge zurück.',
  'Push-up with hands at 90 cm': 'Liegestütz, Hände in 90 cm Höhe',
  'Put your hands on a fixed support. Check that it cannot slide.':
    'Stützen Sie die Hände in etwas Festes. Prüfen Sie, dass es nicht wegrutschen kann.',
  'Walk your feet back until your body is straight.':
    'Gehen Sie mit den Füßen zurück, bis der Körper gerade ist.',
  'Bend your elbows and come down.': 'Beugen Sie die Ellbogen und gehen Sie nach unten.',
  'Push back up.': 'Drücken Sie sich wieder hoch.',
  'Push-up with hands at 75 cm': 'Liegestütz, Hände in 75 cm Höhe',
  'Push-up with hands at 60 cm': 'Liegestütz, Hände in 60 cm Höhe',
  'Push-up with hands at 45 cm': 'Liegestütz, Hände in 45 cm Höhe',
  'Push-up with hands at 30 cm': 'Liegestütz, Hände in 30 cm Höhe',
  'Push-up on the knees': 'Liegestütz auf den Knien',
  'Kneel on a soft mat. Put your hands on the floor.':
    'Knien Sie auf einer weichen Matte. Stützen Sie die Hände in den Boden.',
  'Keep your body straight from knee to shoulder.': 'Der Körper bleibt gerade, vom Knie bis zur Schulter.',
  'Push-up on the floor': 'Liegestütz am Boden',
  'Put your hands on the floor under your shoulders.':
    'Stützen Sie die Hände unter den Schultern auf den Boden.',
  'Keep your body straight from heel to shoulder.':
    'Der Körper bleibt gerade, von der Ferse bis zur Schulter.',
  'Push-up with feet at 30 cm': 'Liegestütz, Füße in 30 cm Höhe',
  'Put your feet on a fixed step.': 'Stellen Sie die Füße auf eine feste Stufe.',
  'Chest press with a band, sitting': 'Brustdrücken mit Band im Sitzen',
  'Put the band round the back of the chair.': 'Legen Sie das Band um die Stuhllehne.',
  'Hold one end in each hand at your chest.': 'Halten Sie in jeder Hand ein Ende an der Brust.',
  'Push both hands forward.': 'Drücken Sie beide Hände nach vorn.',
  'Chest press with hand weights, lying on the back': 'Brustdrücken mit Hanteln in Rückenlage',
  'Lie on your back. Hold the weights over your chest.':
    'Legen Sie sich auf den Rücken. Halten Sie die Gewichte über der Brust.',
  'Bend your elbows and let the weights come down.': 'Beugen Sie die Ellbogen und senken Sie die Gewichte.',
  'Push up again.': 'Drücken Sie wieder nach oben.',
  'Press a band overhead, sitting': 'Band über den Kopf drücken, im Sitzen',
  'Sit on the band. Hold one end in each hand.':
    'Setzen Sie sich auf das Band. Halten Sie in jeder Hand ein Ende.',
  'Push your hands up.': 'Drücken Sie die Hände nach oben.',
  'Stop where your shoulder lets you.': 'Nur so weit, wie die Schulter es zulässt.',
  'Come down slowly.': 'Gehen Sie langsam wieder herunter.',
  'Press hand weights overhead, sitting': 'Hanteln über den Kopf drücken, im Sitzen',
  'Sit tall. Hold the weights at your shoulders.':
    'Sitzen Sie aufrecht. Halten Sie die Gewichte an den Schultern.',
  'Push them up.': 'Drücken Sie sie nach oben.',
  'Raise the bent arm to the front': 'Gebeugten Arm nach vorn heben',
  'Lift the upper arm to the front until it is level.':
    'Heben Sie den Oberarm nach vorn, bis er waagerecht ist.',
  'Raise the straight arm to the front': 'Gestreckten Arm nach vorn heben',
  'Let your arm hang.': 'Lassen Sie den Arm hängen.',
  'Lift it straight to the front until it is level.':
    'Heben Sie ihn gestreckt nach vorn, bis er waagerecht ist.',
  'Raise the bent arm to the side': 'Gebeugten Arm zur Seite heben',
  'Lift the upper arm to the side until it is level.':
    'Heben Sie den Oberarm zur Seite, bis er waagerecht ist.',
  'Raise the straight arm to the side': 'Gestreckten Arm zur Seite heben',
  'Lift it straight to the side until it is level.':
    'Heben Sie ihn gestreckt zur Seite, bis er waagerecht ist.',
  'Press the back of the hand into a door frame': 'Handrücken gegen einen Türrahmen drücken',
  'Stand next to a door frame. Bend your elbow at your side.':
    'Stellen Sie sich neben einen Türrahmen. Beugen Sie den Ellbogen, er bleibt am Körper.',
  'Press the back of your hand into the frame.': 'Drücken Sie den Handrücken gegen den Rahmen.',
  'Turn the arm out against a band': 'Arm gegen ein Band nach außen drehen',
  'Keep your elbow bent at your side.': 'Der Ellbogen bleibt gebeugt am Körper.',
  'Hold the band with the hand in front of your belly.': 'Halten Sie das Band mit der Hand vor dem Bauch.',
  'Turn your forearm out.': 'Drehen Sie den Unterarm nach außen.',
  'Lean-back row, body 30° from upright': 'Rudern, Körper um 30° zurückgelehnt',
  'Hold both handles. Stand under the anchor.':
    'Halten Sie beide Griffe. Stellen Sie sich unter die Befestigung.',
  'Lean back a little.': 'Lehnen Sie sich ein wenig zurück.',
  'Pull your chest to the handles.': 'Ziehen Sie die Brust zu den Griffen.',
  'Go back slowly. Keep your body straight.': 'Gehen Sie langsam zurück. Der Körper bleibt gerade.',
  'Lean-back row, body 38° from upright': 'Rudern, Körper um 38° zurückgelehnt',
  'Lean back a bit more.': 'Lehnen Sie sich etwas weiter zurück.',
  'Lean-back row, body 45° from upright': 'Rudern, Körper um 45° zurückgelehnt',
  'Lean back halfway to the floor.': 'Lehnen Sie sich zurück, halb bis zum Boden.',
  'Lean-back row, body 60° from upright': 'Rudern, Körper um 60° zurückgelehnt',
  'Lean back far. Keep your feet flat.': 'Lehnen Sie sich weit zurück. Die Füße bleiben flach.',
  'Squeeze the shoulder blades together': 'Schulterblätter zusammenziehen',
  'Sit tall. Let your arms hang.': 'Sitzen Sie aufrecht. Lassen Sie die Arme hängen.',
  'Pull your shoulder blades back and down.': 'Ziehen Sie die Schulterblätter nach hinten und unten.',
  'Hold for five slow counts.': 'Halten Sie und zählen Sie langsam bis fünf.',
  'Row with a band, sitting': 'Rudern mit Band im Sitzen',
  'Pull your elbows back.': 'Ziehen Sie die Ellbogen nach hinten.',
  'Row with a hand weight, leaning on a table': 'Rudern mit Hantel, auf einen Tisch gestützt',
  'Lean on a table with one hand. Keep your back straight.':
    'Stützen Sie sich mit einer Hand auf einen Tisch. Der Rücken bleibt gerade.',
  'Let the weight hang from the other hand.': 'Lassen Sie das Gewicht an der anderen Hand hängen.',
  'Pull your elbow up past your side.': 'Ziehen Sie den Ellbogen am Körper vorbei nach oben.',
  'Pull a band down from above': 'Band von oben herunterziehen',
  'Pull your elbows down to your sides.': 'Ziehen Sie die Ellbogen herunter an den Körper.',
  'Go up slowly.': 'Gehen Sie langsam wieder nach oben.',
  'Pull-up with the feet helping': 'Klimmzug mit Hilfe der Füße',
  'Hold the bar. Keep your feet on the chair.': 'Halten Sie die Stange. Die Füße bleiben auf dem Stuhl.',
  'Pull up. Help with your legs as much as you need.':
    'Ziehen Sie sich hoch. Helfen Sie mit den Beinen, so viel Sie brauchen.',
  'Pull-up': 'Klimmzug',
  'Hang from the bar.': 'Hängen Sie sich an die Stange.',
  'Pull up until your chin is at the bar.': 'Ziehen Sie sich hoch, bis das Kinn an der Stange ist.',
};
