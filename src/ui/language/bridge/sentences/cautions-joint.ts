/** What a warning of each joint looks like, in German. */
import type { Sentences } from '../translator.ts';

export const jointCautionSentences: Sentences = {
  'Keep the shoulder below the height where it pinches. Tell us if it wakes you at night.':
    'Bleiben Sie mit der Schulter unter der Höhe, in der es zwickt. Sagen Sie es uns, wenn sie Sie nachts weckt.',
  'Do not snap the elbow straight. Tell us about tingling in the ring or little finger.':
    'Strecken Sie den Ellbogen nicht ruckartig. Sagen Sie es uns, wenn Ringfinger oder kleiner Finger kribbeln.',
  'Keep the wrist straight. Use a handle or rest on your fist if bending it hurts.':
    'Halten Sie das Handgelenk gerade. Schmerzt das Beugen, nehmen Sie einen Griff oder stützen Sie sich auf die Faust.',
  'Use a thick grip if your fingers are sore. Stop if a finger locks.':
    'Nehmen Sie einen dicken Griff, wenn die Finger weh tun. Hören Sie auf, wenn ein Finger festhakt.',
  'Tell us about pain in the groin, or a limp after the session.':
    'Sagen Sie es uns, wenn die Leiste schmerzt oder Sie nach dem Training hinken.',
  'Look at the knee the next morning. Tell us if it is swollen, locks or gives way.':
    'Sehen Sie sich das Knie am nächsten Morgen an. Sagen Sie es uns, wenn es geschwollen ist, festhakt oder nachgibt.',
  'Hold on to something firm. Tell us if the ankle or heel is stiffer in the morning.':
    'Halten Sie sich an etwas Festem fest. Sagen Sie es uns, wenn Sprunggelenk oder Ferse am Morgen steifer sind.',
  'Wear a firm shoe. Tell us about pain on your first steps in the morning.':
    'Tragen Sie einen festen Schuh. Sagen Sie es uns, wenn die ersten Schritte am Morgen weh tun.',
  'Keep the neck at ease. Stop and ring us for tingling in arms or legs, clumsy hands or dizziness.':
    'Lassen Sie den Nacken locker. Bei Kribbeln in Armen oder Beinen, ungeschickten Händen oder Schwindel: Hören Sie auf und rufen Sie uns an.',
  'Stop and ring us if pain runs below the knee, or a leg turns numb or weak.':
    'Zieht Schmerz bis unter das Knie, oder wird ein Bein taub oder schwach: Hören Sie auf und rufen Sie uns an.',
};
