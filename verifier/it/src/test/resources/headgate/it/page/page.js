function name(element) {
  return element.tagName.toLowerCase() + (element.id ? '#' + element.id : '') + ' "'
      + element.textContent.trim().slice(0, 40) + '"';
}

/** Labels of pictures that leave their picture, or that touch another label. */
function labels() {
  const bad = [];
  for (const svg of document.querySelectorAll('svg[role=img]')) {
    const box = svg.viewBox.baseVal;
    const texts = [...svg.querySelectorAll('text')].map(t => [t, t.getBBox()]);
    for (const [t, b] of texts) {
      if (b.x < box.x || b.y < box.y || b.x + b.width > box.x + box.width || b.y + b.height > box.y + box.height) {
        bad.push('outside: ' + name(t));
      }
    }
    for (let i = 0; i < texts.length; i++) {
      for (let j = i + 1; j < texts.length; j++) {
        const [t, a] = texts[i];
        const [u, b] = texts[j];
        // Boxes of text hold room above and below the letters: only the letters must keep apart.
        const shrink = 3;
        if (a.x < b.x + b.width && b.x < a.x + a.width
            && a.y + shrink < b.y + b.height - shrink && b.y + shrink < a.y + a.height - shrink) {
          bad.push('touching: ' + name(t) + ' and ' + name(u));
        }
      }
    }
  }
  return bad;
}

function labelCount() {
  return document.querySelectorAll('svg[role=img] text').length;
}

function channels(colour) {
  const parts = colour.match(/[\d.]+/g).map(Number);
  return {rgb: parts.slice(0, 3), alpha: parts.length > 3 ? parts[3] : 1};
}

/** Relative luminance, WCAG 2.2. */
function luminance(rgb) {
  const linear = rgb.map(c => c / 255).map(c => c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
  return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2];
}

function ratio(a, b) {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light + 0.05) / (dark + 0.05);
}

function background(element) {
  for (let at = element; at; at = at.parentElement) {
    const colour = channels(getComputedStyle(at).backgroundColor);
    if (colour.alpha === 1) {
      return colour.rgb;
    }
  }
  return [255, 255, 255];
}

function texts() {
  document.querySelectorAll('details').forEach(d => d.open = true);
  return [...document.querySelectorAll('body *')]
      .filter(e => !e.closest('svg') || e.tagName === 'text')
      .filter(e => [...e.childNodes].some(n => n.nodeType === Node.TEXT_NODE && n.textContent.trim()))
      .filter(e => e.getClientRects().length);
}

function textCount() {
  return texts().length;
}

/** Text that is too pale for its ground: WCAG 2.2, 1.4.3, normal size. */
function pale(least) {
  const bad = [];
  for (const e of texts()) {
    const style = getComputedStyle(e);
    const colour = channels(e.tagName === 'text' ? style.fill : style.color);
    const found = ratio(colour.rgb, background(e));
    if (colour.alpha < 1 || found < least) {
      bad.push(found.toFixed(2) + ' ' + name(e));
    }
  }
  return bad;
}

function overflow() {
  return document.documentElement.scrollWidth - document.documentElement.clientWidth;
}

/** Elements that stick out of the page on the right. */
function sticking() {
  const right = document.body.getBoundingClientRect().right + 0.5;
  return [...document.querySelectorAll('main *, header *')]
      .filter(e => !e.closest('svg'))
      .filter(e => e.getBoundingClientRect().right > right)
      .map(name);
}

/** What can be reached by the tab key, in the order of the page. */
function stops() {
  return [...document.querySelectorAll('a[href], summary')].filter(e => e.getClientRects().length).map(name);
}

function active() {
  return name(document.activeElement);
}

/** Whether the focus can be seen: an outline of at least two pixels on something inside the window. */
function focusShows() {
  const e = document.activeElement;
  const style = getComputedStyle(e);
  const box = e.getBoundingClientRect();
  return style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2
      && box.right > 0 && box.bottom > 0 && box.left < innerWidth && box.top < innerHeight;
}

function fetched() {
  return performance.getEntriesByType('resource').map(r => r.name);
}

function strangers() {
  return [...document.querySelectorAll('script, img, iframe, object, embed, form, base')].map(name);
}
