import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Scanner } from '../../scan/scanner.ts';
import type { ScanTrouble } from '../../scan/trouble.ts';
import { Icon } from '../components/Icon.tsx';
import { remember, remembered } from '../remember.ts';
import './round.css';

const troubleWords: Record<ScanTrouble, string> = {
  'not-allowed':
    'The camera is not allowed here. Allow it in the browser’s site settings, or type the position.',
  'no-camera': 'This device has no camera that can be used. Type the position instead.',
  busy: 'Another app is using the camera. Close it and try again, or type the position.',
  insecure:
    'Cameras work only over https. Open the app at its https address, or type the position.',
  unsupported: 'This browser gives no camera to web apps. Type the position instead.',
  failed: 'The camera did not start. Try again, or type the position.',
};

/** The camera, kept open through the whole round, with torch and choice of camera. */
export function Viewfinder({
  onText,
  isSmall,
  children,
}: {
  readonly onText: (text: string) => void;
  readonly isSmall: boolean;
  readonly children: ComponentChildren;
}) {
  const box = useRef<HTMLDivElement>(null);
  const listener = useRef(onText);
  listener.current = onText;
  const [cameraId, setCameraId] = useState(remembered('camera'));
  const [attempt, setAttempt] = useState(0);
  const [scanner, setScanner] = useState<Scanner>();
  const [trouble, setTrouble] = useState<ScanTrouble>();
  const [torchOn, setTorchOn] = useState(false);

  useEffect(() => {
    const element = box.current;
    if (!element) return undefined;
    const ending = new AbortController();
    void (async () => {
      setTrouble(undefined);
      const { openScanner } = await import('../../scan/scanner.ts');
      const opened = await openScanner(element, {
        cameraId,
        onText: (text) => listener.current(text),
        onEnded: () => setTrouble('failed'),
        signal: ending.signal,
      });
      if (ending.signal.aborted) return;
      if (opened.ok) setScanner(opened.scanner);
      else setTrouble(opened.trouble);
    })();
    return () => {
      ending.abort();
      setScanner(undefined);
      setTorchOn(false);
    };
  }, [cameraId, attempt]);

  const nextCamera = () => {
    const cameras = scanner?.cameras ?? [];
    const here = cameras.findIndex(({ id }) => id === scanner?.cameraId);
    const next = cameras[(here + 1) % cameras.length];
    if (!next) return;
    remember('camera', next.id);
    setCameraId(next.id);
  };

  return (
    <section class={`viewfinder${isSmall ? ' viewfinder-small' : ''}`} aria-label="Camera">
      <div class="viewfinder-box" ref={box} />
      {trouble && (
        <div class="viewfinder-trouble" role="alert">
          <p>{troubleWords[trouble]}</p>
          <button type="button" class="pill" onClick={() => setAttempt(attempt + 1)}>
            Try again
          </button>
        </div>
      )}
      <div class="viewfinder-bar">
        {children}
        {scanner?.torch && (
          <button
            type="button"
            class="pill"
            aria-pressed={torchOn}
            onClick={() => void scanner.torch?.set(!torchOn).then(setTorchOn)}
          >
            <Icon name="torch" />
            Torch
          </button>
        )}
        {scanner && !scanner.torch && (
          <span class="no-torch">No torch in this camera: use a lamp</span>
        )}
        {(scanner?.cameras.length ?? 0) > 1 && (
          <button type="button" class="pill" onClick={nextCamera}>
            <Icon name="camera" />
            Other
          </button>
        )}
      </div>
    </section>
  );
}
