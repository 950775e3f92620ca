/** The worked example of the documentation: a conforming room sign. Our own invention. */
export const POTTERY_ROOM = {
  units: 'mm',
  mark: 'P-117',
  use: 'permanent-room',
  panel: { width: 230, height: 120, finish: 'matte', colour: '#f4f1e6' },
  lettering: [
    {
      part: 'both',
      text: 'POTTERY 117',
      typeface: { family: 'Open Sans', style: 'sans-serif' },
      characterProportion: 0.9,
      characterHeight: 19,
      strokeThickness: 2.6,
      relief: 0.9,
      section: 'straight',
      characterSpacing: 3.5,
      colour: '#16324f',
      baseline: { x: 20, y: 45 },
    },
  ],
  braille: [
    {
      text: 'pottery 117',
      code: 'ueb-contracted',
      dotBaseDiameter: 1.55,
      dotHeight: 0.75,
      dotShape: 'domed',
      dotSpacing: 2.4,
      cellSpacing: 6.9,
      origin: { x: 20, y: 70 },
    },
  ],
  pictograms: [],
  borders: [],
  properNames: [],
  installation: {
    panelBottomHeight: 1350,
    side: 'latch',
    approach: 'interior',
    door: { leafWidth: 915, swing: 'toward-reader', latchToTextCentre: 280 },
  },
}
