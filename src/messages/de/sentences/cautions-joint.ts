/** What a warning from a joint looks like. */
import type { JointName } from '#core/exercises/joints.ts';

export const jointCautions = {
  'joint-shoulder':
    'Bleiben Sie mit der Schulter unter der Höhe, in der es zwickt. Sagen Sie es uns, wenn sie Sie nachts weckt.',
  'joint-elbow':
    'Strecken Sie den Ellbogen nicht ruckartig. Sagen Sie es uns, wenn Ringfinger oder kleiner Finger kribbeln.',
  'joint-wrist':
    'Halten Sie das Handgelenk gerade. Schmerzt das Beugen, nehmen Sie einen Griff oder stützen Sie sich auf die Faust.',
  'joint-hand':
    'Nehmen Sie einen dicken Griff, wenn die Finger weh tun. Hören Sie auf, wenn ein Finger festhakt.',
  'joint-thumb-base':
    'Halten Sie den Daumen rund und weit von der Hand ab. Sagen Sie es uns, wenn das Greifen mit der Daumenspitze am nächsten Tag noch weh tut.',
  'joint-finger-joint':
    'Drücken Sie nicht mit einem roten oder geschwollenen Fingergelenk. Sagen Sie es uns, wenn es am nächsten Morgen steifer ist.',
  'joint-hip': 'Sagen Sie es uns, wenn die Leiste schmerzt oder Sie nach dem Training hinken.',
  'joint-knee':
    'Sehen Sie sich das Knie am nächsten Morgen an. Sagen Sie es uns, wenn es geschwollen ist, festhakt oder nachgibt.',
  'joint-ankle':
    'Halten Sie sich an etwas Festem fest. Sagen Sie es uns, wenn Sprunggelenk oder Ferse am Morgen steifer sind.',
  'joint-foot':
    'Tragen Sie einen festen Schuh. Sagen Sie es uns, wenn die ersten Schritte am Morgen weh tun.',
  'joint-neck':
    'Lassen Sie den Nacken locker. Bei Kribbeln in Armen oder Beinen, ungeschickten Händen oder Schwindel: Hören Sie auf und rufen Sie uns an.',
  'joint-low-back':
    'Zieht Schmerz bis unter das Knie, oder wird ein Bein taub oder schwach: Hören Sie auf und rufen Sie uns an.',
} as const satisfies Readonly<Record<`joint-${JointName}`, string>>;
