// @ts-check

// The half of canvas-camera.ts that runs in the page, before any of the page's own scripts.

/** @param {MediaStreamConstraints} [constraints] */
function wantedId(constraints) {
  const video = constraints?.video;
  const deviceId = typeof video === 'object' ? video.deviceId : undefined;
  return typeof deviceId === 'object' && 'exact' in deviceId ? deviceId.exact : deviceId;
}

/** @param {{ cameras: import('./canvas-camera.ts').PretendCamera[], refuse?: string }} given */
// oxlint-disable-next-line no-unused-vars -- canvas-camera.ts adds the line that calls it.
function installCanvasCamera({ cameras, refuse }) {
  const canvas = document.createElement('canvas');
  const context = canvas.getContext('2d');
  let picture = new ImageData(640, 480);
  const draw = () => {
    if (canvas.width !== picture.width || canvas.height !== picture.height) {
      Object.assign(canvas, { width: picture.width, height: picture.height });
    }
    context?.putImageData(picture, 0, 0);
  };
  draw();
  // A camera goes on sending when nothing moves; a canvas only sends when it is drawn on.
  setInterval(draw, 33);

  /** @type {Set<MediaStreamTrack>} */
  const live = new Set();

  window.canvasCamera = {
    shownAtMs: 0,
    torch: false,
    running: () => live.size,
    show: (width, height, grayBase64) => {
      const gray = atob(grayBase64);
      picture = new ImageData(width, height);
      const pixels = new Uint32Array(picture.data.buffer);
      for (let i = 0; i < pixels.length; i += 1) {
        pixels[i] = 0xff_00_00_00 + gray.charCodeAt(i) * 0x01_01_01;
      }
      draw();
      window.canvasCamera.shownAtMs = performance.now();
    },
    unplug: () => {
      for (const track of live) {
        track.stop();
        track.dispatchEvent(new Event('ended'));
      }
    },
  };

  /** @param {import('./canvas-camera.ts').PretendCamera} camera */
  const open = (camera) => {
    const stream = canvas.captureStream(30);
    for (const track of stream.getVideoTracks()) pretend(track, camera);
    return stream;
  };

  /**
   * @param {MediaStreamTrack} track
   * @param {import('./canvas-camera.ts').PretendCamera} camera
   */
  const pretend = (track, camera) => {
    live.add(track);
    const stop = track.stop.bind(track);
    const settings = track.getSettings();
    Object.assign(track, {
      stop: () => {
        stop();
        live.delete(track);
      },
      getSettings: () => ({ ...settings, deviceId: camera.id }),
      getCapabilities: () => (camera.torch ? { torch: true } : {}),
      /** @param {{ advanced?: { torch?: boolean }[] }} [wanted] */
      applyConstraints: async (wanted) => {
        for (const { torch } of wanted?.advanced ?? []) {
          if (torch !== undefined) window.canvasCamera.torch = torch;
        }
      },
    });
  };

  Object.defineProperty(navigator, 'mediaDevices', {
    value: {
      /** @param {MediaStreamConstraints} [constraints] */
      getUserMedia: async (constraints) => {
        if (refuse !== undefined) throw new DOMException('As the test asked.', refuse);
        const id = wantedId(constraints);
        const camera = cameras.find((each) => id === undefined || each.id === id);
        if (!camera) throw new DOMException('No such camera.', 'OverconstrainedError');
        return open(camera);
      },
      enumerateDevices: async () =>
        cameras.map(({ id, name }) => ({ deviceId: id, label: name, kind: 'videoinput' })),
    },
  });
}
