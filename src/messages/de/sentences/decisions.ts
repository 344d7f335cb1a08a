/** What was decided, and why. */
import type { DecisionWord } from '#core/decision/answers.ts';
import type { LeftOutRule } from '#core/decision/left-out.ts';
import type { RuleSentence } from '#core/decision/patient-sentence.ts';

export const decisions = {
  progress:
    'Ihre Antworten erlauben etwas mehr, sobald Ihre Physiotherapeutin oder Ihr Physiotherapeut zustimmt.',
  hold: 'Bleiben Sie beim jetzigen Plan: Machen Sie nächstes Mal dasselbe.',
  'ease-back': 'Machen Sie nächstes Mal etwas weniger.',
  pause: 'Machen Sie keine Übungen mehr, bis wir mit Ihnen gesprochen haben.',
} as const satisfies Readonly<Record<DecisionWord, string>>;

export const rules = {
  R1: 'Hören Sie auf und holen Sie jetzt Hilfe. Sie haben ein Zeichen genannt, das sich zuerst ein Mensch ansehen muss.',
  P1: 'Ihr Schmerz war sehr stark. Machen Sie darum weniger und sprechen Sie heute mit uns.',
  'P1-near-usual':
    'Ihr Schmerz war stark, aber nahe an dem, was bei Ihnen üblich ist. Machen Sie weniger. Wir sprechen diese Woche mit Ihnen.',
  P1x: 'Ihr Schmerz war viel stärker als sonst. Machen Sie keine Übungen mehr und sprechen Sie heute mit uns.',
  P2: 'Ihr Schmerz wurde stärker, als er werden soll. Machen Sie darum etwas weniger.',
  P3: 'Das Gelenk tat schon vor dem Training weh. Heute ist darum das leichtere Training dran.',
  P3b: 'Das Gelenk tat schon vor dem Training mehr weh als sonst. Bleiben Sie darum beim jetzigen Plan.',
  P4: 'Das Gelenk tat beim Training weh. Bleiben Sie darum beim jetzigen Plan.',
  P5: 'Das Gelenk tat an mehr als einem Morgen deutlich mehr weh als sonst. Machen Sie darum etwas weniger.',
  'P5-once':
    'Das Gelenk tat am nächsten Morgen immer noch mehr weh als sonst. Machen Sie darum etwas weniger.',
  'P5-later':
    'Am ersten Morgen, zu dem Sie geantwortet haben, tat das Gelenk immer noch mehr weh als sonst. Machen Sie darum etwas weniger.',
  P5h: 'Das Gelenk tat am nächsten Morgen mehr weh als sonst. Bleiben Sie darum beim jetzigen Plan.',
  'P5h-later':
    'Am ersten Morgen, zu dem Sie geantwortet haben, tat das Gelenk mehr weh als sonst. Bleiben Sie darum beim jetzigen Plan.',
  P5r: 'Das Gelenk tut morgens schon seit einer Weile mehr weh als sonst. Bleiben Sie beim jetzigen Plan. Wir sehen uns das mit Ihnen an.',
  P6: 'Zwei Stunden später tat das Gelenk deutlich mehr weh als sonst. Machen Sie darum etwas weniger.',
  P6h: 'Zwei Stunden später tat das Gelenk etwas mehr weh als sonst. Bleiben Sie darum beim jetzigen Plan.',
  P7: 'Die ganze Woche tat es am Morgen mehr weh als sonst. Machen Sie darum etwas weniger.',
  P7h: 'Diese Woche tat es am Morgen etwas mehr weh. Bleiben Sie darum beim jetzigen Plan.',
  B0: 'Wir lernen noch, was für Ihr Gelenk üblich ist. Bleiben Sie vorerst beim jetzigen Plan.',
  B0r: 'Wir gehen von den üblichen Schmerzen aus, die Sie uns genannt haben. Bis Ihre Antworten am Morgen das bestätigen, kommen nur ein paar Wiederholungen dazu, kein Gewicht.',
  B1: 'Wir möchten neu festhalten, welche Beschwerden für Ihr Gelenk üblich sind.',
  B2: 'Ihrem Gelenk ging es besser als früher. Wir möchten neu festhalten, was üblich ist, bevor Sie mehr machen.',
  B3: 'Ihre üblichen Schmerzen sind stärker als am Anfang. Bleiben Sie beim jetzigen Plan, bis wir uns das gemeinsam angesehen haben.',
  W3: 'Das Gelenk ist viel stärker geschwollen als sonst. Lassen Sie es ruhen und sprechen Sie heute mit uns.',
  W2: 'Das Gelenk ist deutlich stärker geschwollen als sonst. Lassen Sie es heute ruhen. Machen Sie danach etwas weniger.',
  W1s: 'Das Gelenk ist ein wenig stärker geschwollen als sonst. Bleiben Sie darum beim jetzigen Plan.',
  S1: 'Im Gelenk ist viel Flüssigkeit. Lassen Sie es ruhen und sprechen Sie heute mit uns.',
  S2: 'Die Flüssigkeit im Gelenk ist nicht weniger geworden. Lassen Sie es ruhen und sprechen Sie heute mit uns.',
  S2f: 'Im Gelenk ist Flüssigkeit. Lassen Sie es ruhen, bis sie zurückgegangen ist. Machen Sie dann etwas weniger.',
  S3: 'Im Gelenk ist ein wenig Flüssigkeit. Bleiben Sie darum beim jetzigen Plan.',
  T1: 'Das Gelenk blieb viel länger steif als sonst. Machen Sie darum etwas weniger.',
  T2: 'Das Gelenk blieb länger steif als sonst. Bleiben Sie darum beim jetzigen Plan.',
  F1: 'Dieser Schub dauert länger als die meisten. Halten Sie das Gelenk mit dem leichteren Training in Bewegung. Wir sprechen diese Woche mit Ihnen.',
  'F1-rest':
    'Dieser Schub dauert länger als die meisten. Lassen Sie das Gelenk ruhen, bis wir gesprochen haben.',
  F1i: 'Ihr Schub hält an. Machen Sie darum weniger und sagen Sie uns Bescheid.',
  F2: 'Sie haben einen Schub. Machen Sie darum weniger, bis er vorbei ist.',
  W1: 'Ihr Körper hat es gerade insgesamt schwer. Bleiben Sie darum beim jetzigen Plan.',
  C1: 'Sie mussten wegen des Gelenks früher aufhören. Machen Sie darum etwas weniger.',
  C2: 'Nicht alle Wiederholungen wurden gemacht. Bleiben Sie darum beim jetzigen Plan.',
  C3: 'Die Sätze waren anstrengender als geplant. Bleiben Sie darum beim jetzigen Plan.',
  C4: 'Es soll noch etwas länger wie geplant klappen, bevor ein größerer Schritt kommt.',
  A1: 'Einige Trainings sind ausgefallen. Bleiben Sie beim jetzigen Plan, bis es wieder regelmäßig geht.',
  A2: 'Nach einer Pause fängt man am besten mit etwas weniger wieder an.',
  M1: 'Wir haben noch nicht alle Ihre Antworten. Bleiben Sie darum beim jetzigen Plan.',
  M1r: 'Wir richten uns nach dem ersten Morgen, zu dem Sie geantwortet haben. Diesmal kommen nur ein paar Wiederholungen dazu.',
  X1: 'Am Morgen scheinen die Schmerzen langsam zuzunehmen. Bleiben Sie darum beim jetzigen Plan.',
  D1: 'Was Sie zusätzlich gegen Schmerzen nehmen, kann verdecken, wie es dem Gelenk geht. Bleiben Sie darum beim jetzigen Plan.',
  D2: 'Ihre Behandlung hat sich kürzlich geändert. Bleiben Sie beim jetzigen Plan, bis sich das eingespielt hat.',
  D3: 'Sie haben mehr gemacht als geplant. Halten Sie sich vorerst an den Plan. Sagen Sie uns Bescheid, wenn es sich zu leicht anfühlt.',
  D4: 'Das Gelenk hat nachgegeben. Bleiben Sie beim jetzigen Plan und sagen Sie uns Bescheid.',
} as const satisfies Readonly<Record<RuleSentence, string>>;

/** Why a dose is held where a question was left open: what was not said is never told as said. */
export const leftOut = {
  D1: 'Sie haben offengelassen, ob Sie zusätzlich ein Schmerzmittel genommen haben. Darum bleibt Ihr Training gleich.',
  D3: 'Sie haben offengelassen, ob Sie mehr gemacht haben als geplant. Darum bleibt Ihr Training gleich.',
  D4: 'Sie haben offengelassen, ob das Gelenk nachgegeben hat. Darum bleibt Ihr Training gleich.',
  C3: 'Sie haben offengelassen, wie viele noch gegangen wären. Darum bleibt Ihr Training gleich.',
} as const satisfies Readonly<Record<LeftOutRule, string>>;
