// Loaded before the server: sets its wall clock two hours back at SIGUSR2, and two hours ahead of that at the next one, by turns.
const real = Date.now;
let shiftMs = 0;
Date.now = () => real() + shiftMs;
process.on('SIGUSR2', () => {
  shiftMs = shiftMs === 0 ? -7_200_000 : 0;
});
