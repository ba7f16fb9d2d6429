const STOPPED = 60000; // ms

/** The same, unless it takes so long that the page has come to a stop. */
export function inTime(asked) {
  let timer;
  const late = new Promise((_, reject) => { timer = setTimeout(() => reject(new Error(`said nothing for ${STOPPED / 1000} s`)), STOPPED); });
  return Promise.race([asked, late]).finally(() => clearTimeout(timer));
}
