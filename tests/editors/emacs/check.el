;;; check.el --- Makes the mistake in Emacs and writes down what Eglot shows of it  -*- lexical-binding: t -*-
;; FETTLE_JOB names a JSON file; see ../support/plain.ts for what goes in and what must come out.

(require 'cl-lib)
;; `-Q' skips Debian's start file, which would put these folders on the path.
(dolist (folder (file-expand-wildcards "/usr/share/emacs/site-lisp/elpa/*"))
  (when (file-directory-p folder) (add-to-list 'load-path folder)))
(require 'eglot)
(require 'flymake)
(require 'json)

(defvar job (json-parse-string (with-temp-buffer (insert-file-contents (getenv "FETTLE_JOB")) (buffer-string))
                               :object-type 'plist :array-type 'list))
(defvar outcome nil)

(setq eglot-sync-connect t
      eglot-autoshutdown nil
      eglot-confirm-server-initiated-edits nil
      eglot-events-buffer-size 0
      make-backup-files nil
      create-lockfiles nil)

(define-derived-mode fettle-build-mode prog-mode "Build")
(add-to-list 'eglot-server-programs (cons 'fettle-build-mode (plist-get job :command)))

(defun note (name value) (setq outcome (plist-put outcome name value)))

(defun wait (what look)
  "Call LOOK until it returns something, and return that; fail saying WHAT."
  (let ((end (+ (float-time) (/ (plist-get job :limitMs) 1000.0))) seen)
    (while (and (not (setq seen (funcall look))) (< (float-time) end))
      (accept-process-output nil 0.005))
    (or seen (error "Waited in vain: %s" what))))

(defun lsp-data (diagnostic)
  (cdr (assq 'eglot-lsp-diag (flymake-diagnostic-data diagnostic))))

(defun finding ()
  "The finding as Flymake shows it."
  (cl-find (plist-get job :finding) (flymake-diagnostics)
           :key (lambda (diagnostic) (plist-get (lsp-data diagnostic) :code)) :test #'equal))

(defun go-to (column)
  (goto-char (point-min))
  (forward-line (plist-get job :line))
  (forward-char column))

(defun start ()
  (find-file (plist-get job :file))
  (setq-local project-find-functions (list (lambda (_) (cons 'transient (plist-get job :workspace)))))
  (fettle-build-mode)
  (apply #'eglot--connect (eglot--guess-contact))
  (wait "the buffer is managed" (lambda () (bound-and-true-p eglot--managed-mode)))
  (flymake-mode 1)
  (flymake-start))                      ; no idle timer runs in batch

(defun type-mistake ()
  (go-to (plist-get job :value))
  (let ((begun (float-time)) found)
    (delete-char (- (plist-get job :valueEnd) (plist-get job :value)))
    (insert (plist-get job :typed))
    (eglot--signal-textDocument/didChange) ; the idle timer would do this
    (setq found (wait "the finding comes" #'finding))
    (note :keystrokeToFindingMs (round (* 1000 (- (float-time) begun))))
    (note :source (plist-get (lsp-data found) :source))
    (note :broken (buffer-substring-no-properties (point-min) (point-max)))))

(defun hover ()
  (go-to (plist-get job :key))
  (let (text)
    (eglot-hover-eldoc-function (lambda (shown &rest _) (setq text (or shown ""))))
    (note :hover (substring-no-properties (wait "the hover comes" (lambda () text))))))

(defun mend ()
  (let* ((found (finding))
         (choose (lambda (_prompt items &rest more)
                   (let ((chosen (or (nth 4 more) (caar items)))) (note :fix chosen) chosen)))
         (last-nonmenu-event t)         ; answered in the minibuffer, not by a menu
         (actions (eglot-code-actions (flymake-diagnostic-beg found) (flymake-diagnostic-end found) "quickfix")))
    ;; A single action is carried out without asking.
    (when (= (length actions) 1) (note :fix (plist-get (car actions) :title)))
    (cl-letf (((symbol-function 'completing-read) choose))
      (eglot-code-actions (flymake-diagnostic-beg found) (flymake-diagnostic-end found) "quickfix" t))
    (eglot--signal-textDocument/didChange)
    (wait "the finding goes" (lambda () (not (finding))))
    (let ((inhibit-message t)) (save-buffer))))

(defun whole () (buffer-substring-no-properties (point-min) (point-max)))

(defun go-to-name ()
  (let ((at (plist-get job :nameAt)))
    (goto-char (point-min))
    (forward-line (plist-get at :line))
    (forward-char (plist-get at :character))))

(defun rename ()
  (let ((before (whole)))
    (go-to-name)
    (note :uses (vconcat (sort (mapcar (lambda (use) (xref-location-line (xref-item-location use)))
                                       (xref-backend-references 'eglot (xref-backend-identifier-at-point 'eglot)))
                               #'<)))
    (go-to-name)
    (buffer-enable-undo)
    (undo-boundary)
    ;; A guide that nobody has open names it too: Eglot asks whether it may be changed.
    (cl-letf (((symbol-function 'y-or-n-p) (lambda (&rest _) t)))
      (eglot-rename (plist-get job :newName)))
    (note :renamed (whole))
    (undo-boundary)
    (setq last-command 'ignore)
    (undo)
    (note :undone (if (equal (whole) before) t :false))
    (eglot--signal-textDocument/didChange)))

(defun hints ()
  "What later versions of Eglot show behind values."
  (when (fboundp 'eglot-inlay-hints-mode)
    (let (labels)
      (setq labels
            (mapcar (lambda (hint) (plist-get hint :label))
                    (jsonrpc-request (eglot-current-server) :textDocument/inlayHint
                                     (list :textDocument (eglot--TextDocumentIdentifier)
                                           :range (list :start (eglot--pos-to-lsp-position (point-min))
                                                        :end (eglot--pos-to-lsp-position (point-max)))))))
      (note :hints (vconcat labels)))))

(condition-case problem
    (let (server)
      (start)
      (setq server (eglot-current-server))
      (type-mistake)
      (hover)
      (mend)
      (hints)
      (rename)
      (eglot-shutdown server nil 5))
  (error
   (note :problem (format "%s\nFindings shown: %s" (error-message-string problem)
                          (mapconcat #'flymake-diagnostic-text (flymake-diagnostics) "; ")))))

(let ((coding-system-for-write 'utf-8-unix))
  (write-region (json-serialize outcome) nil (plist-get job :outcome) nil 'quiet))
(set-buffer-modified-p nil)
(kill-emacs 0)
;;; check.el ends here
