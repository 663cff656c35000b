/**
 * The map and the overlay in one PNG, device pixels. The canvas must have been drawn in this very
 * task: WebGL drops its picture when the browser next paints.
 */
export async function pngOf(
  canvas: HTMLCanvasElement, overlay: SVGSVGElement, fontFamily: string,
): Promise<Blob> {
  const sheet = document.createElement('canvas');
  sheet.width = canvas.width;
  sheet.height = canvas.height;
  const pen = sheet.getContext('2d');
  if (pen === null) throw new Error('picture: this browser gave no 2D canvas; close other tabs and try again');
  pen.drawImage(canvas, 0, 0);
  pen.drawImage(await imageOf(overlay, fontFamily), 0, 0, sheet.width, sheet.height);
  return new Promise((resolve, reject) => {
    sheet.toBlob((blob) => {
      if (blob === null) reject(new Error('picture: the browser could not write a PNG; try a smaller window'));
      else resolve(blob);
    }, 'image/png');
  });
}

async function imageOf(overlay: SVGSVGElement, fontFamily: string): Promise<HTMLImageElement> {
  const copy = overlay.cloneNode(true) as SVGSVGElement;
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  copy.setAttribute('font-family', fontFamily);
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(new XMLSerializer().serializeToString(copy))}`;
  await image.decode();
  return image;
}
