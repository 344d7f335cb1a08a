import type { Sentences } from '../translator.ts';

/** Joints, arms and legs as the core names them in a sentence, in German. Read by nobody yet. */
export const jointSentences: Sentences = {
  'left shoulder': 'Schulter links',
  'right shoulder': 'Schulter rechts',
  'left elbow': 'Ellbogen links',
  'right elbow': 'Ellbogen rechts',
  'left wrist': 'Handgelenk links',
  'right wrist': 'Handgelenk rechts',
  'left hand': 'Hand links',
  'right hand': 'Hand rechts',
  'left hip': 'Hüfte links',
  'right hip': 'Hüfte rechts',
  'left knee': 'Knie links',
  'right knee': 'Knie rechts',
  'left ankle': 'Sprunggelenk links',
  'right ankle': 'Sprunggelenk rechts',
  'left foot': 'Fuß links',
  'right foot': 'Fuß rechts',
  neck: 'Nacken',
  'low back': 'unterer Rücken',
  'left arm': 'linker Arm',
  'right arm': 'rechter Arm',
  'left leg': 'linkes Bein',
  'right leg': 'rechtes Bein',
};
