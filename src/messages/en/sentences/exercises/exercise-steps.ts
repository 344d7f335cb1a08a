/** Steps that exercises of more than one region share. */
export const lowerSlowly = 'Lower slowly.';
export const holdAndBreathe = 'Hold. Keep breathing.';
export const letGo = 'Let go.';
export const comeBackSlowly = 'Come back slowly.';
export const holdOnToAFirmSupport = 'Hold on to a firm support.';
export const tieTheBandToSomethingFirm = 'Tie the band to something firm in front of you.';
export const lieOnYourBack = 'Lie on your back. Bend your knees.';
export const holdItWithBothHands = 'Hold it with both hands.';
export const bendYourElbow = 'Bend your elbow.';
export const tieTheBandToSomethingFirmAbove = 'Tie the band to something firm above you.';
export const holdForThreeSlowCounts = 'Hold for three slow counts.';
