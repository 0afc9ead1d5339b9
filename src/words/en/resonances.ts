/** Why a resonance was found, in one line. */
export const resonanceWhy = (riseDb: string, aboveRoomDb: string, turnedDeg: number) =>
  `+${riseDb} dB above the fork alone, ${aboveRoomDb} dB above the room, phase turned ${turnedDeg}°`;
