// Numbers as the program writes them.

/** The value rounded half up to so many decimals, never a negative zero. */
function fixed(value, decimals) {
  const size = Math.abs(value);
  const whole = size < 1e-6 ? 0 : Math.round(Number(size + "e" + decimals));
  const text = Number(whole + "e-" + decimals).toFixed(decimals);
  return value < 0 && whole > 0 ? "-" + text : text;
}

/** As fixed, without trailing zeros. */
function trimmed(value, decimals) {
  const text = fixed(value, decimals);
  return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
}

/** As fixed, with a sign before what is above 0. */
function signed(value, decimals) {
  const text = fixed(value, decimals);
  return Number(text) > 0 ? "+" + text : text;
}

/** A swingweight in points above A0 as builders write it. */
function swingweightText(points) {
  const tenths = Math.round(points * 10) / 10;
  if (tenths < 0 || tenths >= 70) {
    return "A0 " + signed(tenths, 1);
  }
  const letter = Math.floor(tenths / 10);
  return String.fromCharCode(65 + letter) + trimmed(tenths - letter * 10, 1);
}

/**
 * The chance, 0 to 1, that a standard normal number is below a value: Abramowitz and Stegun 7.1.26, off by less than 1e-7,
 * far below the whole percents that are shown.
 */
function normalBelow(value) {
  const x = Math.abs(value) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const series = ((((1.061405429 * t - 1.453152027) * t + 1.421413741) * t - 0.284496736) * t + 0.254829592) * t;
  const tail = series * Math.exp(-x * x) / 2;
  return value < 0 ? tail : 1 - tail;
}
