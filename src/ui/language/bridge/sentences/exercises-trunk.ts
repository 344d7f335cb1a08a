/** Exercises for trunk and neck, in German. */
import type { Sentences } from '../translator.ts';

export const trunkExercises: Sentences = {
  'Press the low back down, lying on the back': 'Unteren Rücken nach unten drücken, in Rückenlage',
  'Pull your belly in and press your low back down.':
    'Ziehen Sie den Bauch ein und drücken Sie den unteren Rücken nach unten.',
  'Slide one heel out with a still back': 'Eine Ferse vorschieben, der Rücken bleibt ruhig',
  'Pull your belly in.': 'Ziehen Sie den Bauch ein.',
  'Slide one heel out, then back.': 'Schieben Sie eine Ferse vor und wieder zurück.',
  'Change legs. Keep your back still.': 'Wechseln Sie das Bein. Der Rücken bleibt ruhig.',
  'Lower opposite arm and leg, lying on the back': 'Arm und Bein der anderen Seite senken, in Rückenlage',
  'Lie on your back. Lift both arms and both bent knees.':
    'Legen Sie sich auf den Rücken. Heben Sie beide Arme und beide gebeugten Knie.',
  'Lower one arm and the other leg.': 'Senken Sie einen Arm und das Bein der anderen Seite.',
  'Come back and change sides.': 'Gehen Sie zurück und wechseln Sie die Seite.',
  'Keep your back still.': 'Der Rücken bleibt ruhig.',
  'Forearm plank on the knees': 'Unterarmstütz auf den Knien',
  'Lie on your front. Prop up on your forearms.':
    'Legen Sie sich auf den Bauch. Stützen Sie sich auf die Unterarme.',
  'Lift your hips. Keep your knees down.': 'Heben Sie das Becken. Die Knie bleiben unten.',
  'Hold a straight line. Keep breathing.': 'Halten Sie eine gerade Linie. Atmen Sie weiter.',
  'Forearm plank on the feet': 'Unterarmstütz auf den Füßen',
  'Lift your hips and knees.': 'Heben Sie Becken und Knie.',
  'Reach out opposite arm and leg on all fours': 'Auf allen vieren Arm und Bein der anderen Seite strecken',
  'Go on your hands and knees.': 'Gehen Sie auf Hände und Knie.',
  'Reach out one arm and the other leg.': 'Strecken Sie einen Arm und das Bein der anderen Seite aus.',
  'Keep your back level.': 'Der Rücken bleibt waagerecht.',
  'Lift the chest, lying on the front': 'Brust heben in Bauchlage',
  'Lie on your front. Put your arms at your sides.':
    'Legen Sie sich auf den Bauch. Legen Sie die Arme neben den Körper.',
  'Lift your chest a little. Look at the floor.': 'Heben Sie die Brust ein wenig. Schauen Sie auf den Boden.',
  'Side plank on the knees': 'Seitstütz auf den Knien',
  'Lie on your side. Bend your knees.': 'Legen Sie sich auf die Seite. Beugen Sie die Knie.',
  'Prop up on your forearm.': 'Stützen Sie sich auf den Unterarm.',
  'Lift your hips. Hold. Keep breathing.': 'Heben Sie das Becken. Halten Sie. Atmen Sie weiter.',
  'Draw the chin in': 'Kinn zurückziehen',
  'Sit tall. Look straight ahead.': 'Sitzen Sie aufrecht. Schauen Sie geradeaus.',
  'Draw your chin straight back.': 'Ziehen Sie das Kinn gerade nach hinten.',
  'Press the forehead into the hands': 'Stirn in die Hände drücken',
  'Put both hands on your forehead.': 'Legen Sie beide Hände an die Stirn.',
  'Press gently. Do not let your head move.': 'Drücken Sie leicht. Der Kopf bewegt sich dabei nicht.',
  'Press the side of the head into the hand': 'Kopf seitlich in die Hand drücken',
  'Put one hand on the side of your head.': 'Legen Sie eine Hand seitlich an den Kopf.',
  'Let go. Then do the other side.': 'Lassen Sie locker. Dann kommt die andere Seite.',
};
