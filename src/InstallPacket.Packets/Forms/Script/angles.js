// Heights and bearings from what can be sighted. Angles in degrees; lengths in one and the same unit.
const tangent = degrees => Math.tan(degrees * Math.PI / 180);

// From a known distance: the angle up to the top and the angle to the foot, which is negative when one looks down at it.
function heightFromFoot(distance, top, foot) {
  return distance * (tangent(top) - tangent(foot));
}

// From a known distance and the height of the eye, on level ground.
function heightFromEye(eye, distance, top) {
  return eye + distance * tangent(top);
}

// From two places, one a step straight behind the other on level ground; the angle from farther back is the smaller one.
function heightFromStep(eye, step, near, far) {
  return eye + step / (1 / tangent(far) - 1 / tangent(near));
}

// A stick and what is to be measured cast shadows at the same moment.
function heightFromShadow(stick, stickShadow, shadow) {
  return stick * shadow / stickShadow;
}

const wholeTurn = degrees => ((degrees % 360) + 360) % 360;

// East declination is positive.
function trueFromDeclination(reading, declination) {
  return wholeTurn(reading + declination);
}

// What the compass shows at a mark of known bearing gives its offset here, declination and iron together.
function trueFromMark(reading, markReading, markTrue) {
  return wholeTurn(reading + markTrue - markReading);
}

// How far the height moves when each angle is half a degree wrong, the worst way; for a warning, not for the job.
function stepSpread(eye, step, near, far) {
  const sights = [-0.5, 0.5].flatMap(a => [-0.5, 0.5].map(b => heightFromStep(eye, step, near + a, far + b)));
  return Math.max(...sights.map(h => Math.abs(h - heightFromStep(eye, step, near, far))));
}
