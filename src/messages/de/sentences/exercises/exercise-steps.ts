/** Steps that exercises of more than one region share. */
export const lowerSlowly = 'Langsam wieder absenken.';
export const holdAndBreathe = 'Halten Sie. Atmen Sie weiter.';
export const letGo = 'Lassen Sie locker.';
export const comeBackSlowly = 'Langsam wieder zurück.';
export const holdOnToAFirmSupport = 'Halten Sie sich an etwas Festem fest.';
export const tieTheBandToSomethingFirm = 'Binden Sie das Band vor sich an etwas Festes.';
export const lieOnYourBack = 'Legen Sie sich auf den Rücken. Beugen Sie die Knie.';
export const holdItWithBothHands = 'Halten Sie es mit beiden Händen.';
export const bendYourElbow = 'Beugen Sie den Ellbogen.';
export const tieTheBandToSomethingFirmAbove = 'Binden Sie das Band über sich an etwas Festes.';
export const holdForThreeSlowCounts = 'Bleiben Sie so und zählen Sie langsam bis drei.';
