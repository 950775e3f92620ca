/** Types of the requests and answers. Made by `npm run generate` from openapi/openapi.json. */

export interface paths {
    "/livez": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Is the process alive?
         * @description Answers as long as the process can answer at all.
         */
        get: operations["isAlive"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/readyz": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Should work be sent here?
         * @description Refuses while the service drains before it stops, and while its database does not answer.
         */
        get: operations["isReady"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/metrics": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * How does the service do?
         * @description Counters and measurements in the text format of Prometheus. It needs no key, so that it must not be reachable from outside; METRICS=off leaves it out.
         */
        get: operations["getMetrics"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/checks": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Check a sign
         * @description Takes one sign as a description, a drawing (or the drilling program that makes its dots) or both, and answers with a report on every requirement, whether the sign passes or not. Nothing is kept. The Accept header picks the form of the report.
         */
        post: operations["createCheck"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/readings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Read a sign
         * @description Takes what a check takes and answers with what a finger or an eye would read off the sign, not judged.
         */
        post: operations["createReading"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/translations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Translate print into braille, or back
         * @description The cells of a text, broken into lines and laid out in millimetres; or the text that cells say.
         */
        post: operations["createTranslation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/drawings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Draw a sign that passes
         * @description Takes a sign without its geometry and answers with a drawing at true scale that passes its own check at the drawing stage for all the standards asked, or with the problem that names what excludes what. The same order gives the same drawing.
         */
        post: operations["createDrawing"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/corrections": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Put a drawing right
         * @description Takes what a check takes, with a drawing, and answers with the same drawing in which only what failed was changed: braille, the distances of letters and lines, and colours. Each change was borne out by a check of the result; what would break something else, or needs a decision about the design, is listed and left as it is.
         */
        post: operations["createCorrection"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/dot-plans": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Plan in which order dots are set
         * @description Takes points, a drawing or a description, and answers with the order in which a head that sets one dot at each plunge can set them without standing over a dot that it has laid: with travel, time, volume, changes of cartridge and warnings. The Accept header picks the form. Beside a bare drawing the sizes stand in the query: head.lift=3, machine.dwell=0.2.
         */
        post: operations["createDotPlan"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/standards": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the standards
         * @description All standards that a sign can be held against, each with its revision and a digest of its table.
         */
        get: operations["listStandards"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/standards/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * One standard as a table
         * @description Every requirement with its clause, limits, scope, force and citation; and what the table leaves out.
         */
        get: operations["getStandard"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/standards/{id}/changes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * How a table changed
         * @description Each raise of the revision, with the requirements that it changed. Earlier revisions stay callable.
         */
        get: operations["getStandardChanges"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/standards/common": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * What several standards allow together
         * @description For each quantity what satisfies every requirement in force, and the smallest sets of requirements that exclude each other.
         */
        get: operations["getCommonWindows"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List submittals
         * @description The newest first, a page at a time.
         */
        get: operations["listSubmittals"];
        put?: never;
        /**
         * Upload a set of signs
         * @description Takes drawings, zips of drawings, sign schedules (CSV or XLSX) and descriptions (JSON) together, or one body of JSON. All that could be used is kept and queued before this is answered; what could not is in `problems`.
         */
        post: operations["createSubmittal"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/signs": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The signs of a submittal
         * @description In the order of the upload, a page at a time, each with its latest report.
         */
        get: operations["listSigns"];
        put?: never;
        /**
         * Add signs to a submittal
         * @description Takes the files or the signs that creating one takes; they come behind those that are there. Its name, standards and options stay, so that none may be given.
         */
        post: operations["addSigns"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * One submittal
         * @description Its state and how far it is.
         */
        get: operations["getSubmittal"];
        put?: never;
        post?: never;
        /**
         * Delete a submittal
         * @description Everything that belongs to it is deleted, its history included. Fetch its evidence before.
         */
        delete: operations["deleteSubmittal"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/cancel": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Cancel a submittal
         * @description Signs that have no report yet are not checked any more; reports that are there stay.
         */
        post: operations["cancelSubmittal"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/history": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The history of a submittal
         * @description Every change: who, when, what. Each event holds the hash of the one before; all are computed anew.
         */
        get: operations["getHistory"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/events": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Progress of a submittal as it happens
         * @description Server-sent events: `progress` whenever something has changed, at most a few times a second, and `done` when every sign has been checked or the submittal was cancelled; then the stream ends. `id` is the number of events in the history. Who comes back with the `id` of `done` in Last-Event-ID is answered with 204, which tells a client to stop.
         */
        get: operations["watchSubmittal"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/webhooks": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List the addresses
         * @description The oldest first, without their secrets.
         */
        get: operations["listWebhooks"];
        put?: never;
        /**
         * Have an address told of what happens
         * @description Messages are sent by POST and signed by Standard Webhooks 1.0.0 with the secret that this answer alone shows.
         */
        post: operations["createWebhook"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/webhooks/{webhook}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * One address
         * @description With the messages that were last sent to it and what became of them.
         */
        get: operations["getWebhook"];
        put?: never;
        post?: never;
        /**
         * Tell an address nothing more
         * @description It is deleted with its secret, and what still waited for it is not sent.
         */
        delete: operations["deleteWebhook"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/webhooks/{webhook}/rotate": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Give an address a new secret
         * @description Messages are signed with the new secret and, for 24 hours, with the one before as well.
         */
        post: operations["rotateWebhookSecret"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/webhooks/{webhook}/test": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Try an address
         * @description Sends it a message of type `endpoint.test`; what becomes of it is shown with the address.
         */
        post: operations["testWebhook"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/signs/{sign}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * One sign
         * @description Its latest report, and all that was added to it: readings, facts of its place, waivers, notes.
         */
        get: operations["getSign"];
        put?: never;
        post?: never;
        /**
         * Take a sign out
         * @description The sign and its reports are deleted; the history still says that it was there.
         */
        delete: operations["removeSign"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/signs/{sign}/reports/{revision}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * A report that was made of a sign
         * @description As it was made, never changed since.
         */
        get: operations["getSignReport"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/signs/{sign}/measurements": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Add readings of an instrument
         * @description Readings of a quantity take the place of those given before, in the description too. The sign is checked again.
         */
        post: operations["addMeasurements"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/signs/{sign}/installation": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /**
         * Say where the sign hangs
         * @description Takes the place of what was said of its place before, in the description too. The sign is checked again.
         */
        put: operations["setInstallation"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/signs/{sign}/waivers": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Let a finding stand
         * @description Names a finding by its fingerprint, with the reason and the authority that allows it. The finding and its verdict stay as they are.
         */
        post: operations["addWaiver"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/signs/{sign}/waivers/{waiver}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /**
         * Withdraw a waiver
         * @description It no longer holds; the history keeps it.
         */
        delete: operations["withdrawWaiver"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/signs/{sign}/notes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Add a note
         * @description A remark for whoever reads the evidence. It changes no verdict.
         */
        post: operations["addNote"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/report.html": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The whole submittal as a page
         * @description As of the last event of the history; the same state gives the same bytes.
         */
        get: operations["getSetReportHtml"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/report.pdf": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The whole submittal as tagged PDF
         * @description As of the last event of the history; the same state gives the same bytes.
         */
        get: operations["getSetReportPdf"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/report.csv": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Every finding as a table
         * @description As of the last event of the history; the same state gives the same bytes.
         */
        get: operations["getSetReportCsv"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/schedule.csv": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The schedule with verdicts as a table
         * @description As of the last event of the history; the same state gives the same bytes.
         */
        get: operations["getSetScheduleCsv"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/report.sarif": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Every finding as SARIF 2.1.0
         * @description As of the last event of the history; the same state gives the same bytes.
         */
        get: operations["getSetReportSarif"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/report.xml": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Every finding as JUnit XML
         * @description As of the last event of the history; the same state gives the same bytes.
         */
        get: operations["getSetReportXml"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/report.bcf": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Failing findings as BCF 3.0
         * @description As of the last event of the history; the same state gives the same bytes.
         */
        get: operations["getSetReportBcf"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/inspection.html": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * What is left for gauge and tape, as a page
         * @description As of the last event of the history; the same state gives the same bytes.
         */
        get: operations["getSetInspectionHtml"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/inspection.pdf": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * What is left for gauge and tape, as tagged PDF
         * @description As of the last event of the history; the same state gives the same bytes.
         */
        get: operations["getSetInspectionPdf"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/evidence.zip": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Everything, with a manifest of digests
         * @description As of the last event of the history; the same state gives the same bytes.
         */
        get: operations["getSetEvidenceZip"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/signs/{sign}/report.html": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The report of one sign
         * @description With the waivers, notes and readings that were added to it.
         */
        get: operations["getSignReportHtml"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/signs/{sign}/report.pdf": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The report of one sign
         * @description With the waivers, notes and readings that were added to it.
         */
        get: operations["getSignReportPdf"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/signs/{sign}/inspection.html": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * What is left for gauge and tape on one sign
         * @description With the waivers, notes and readings that were added to it.
         */
        get: operations["getSignInspectionHtml"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/signs/{sign}/inspection.pdf": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * What is left for gauge and tape on one sign
         * @description With the waivers, notes and readings that were added to it.
         */
        get: operations["getSignInspectionPdf"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/submittals/{submittal}/signs/{sign}/report.svg": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The sign redrawn with its findings
         * @description As it was drawn with the latest report; never the drawing that was sent.
         */
        get: operations["getSignDrawing"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/keys": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * List API keys
         * @description Of the organisation whose key is sent: when each was last used, and whether it still works.
         */
        get: operations["listKeys"];
        put?: never;
        /**
         * Make an API key
         * @description For the organisation whose key is sent, with the same limit of requests. The answer alone holds the key itself.
         */
        post: operations["createKey"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/keys/{key}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /**
         * Revoke an API key
         * @description It no longer works, nor do sessions that were opened with it. Doing it twice changes nothing.
         */
        delete: operations["revokeKey"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
}
export interface webhooks {
    "submittal.checked": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Every sign of a submittal has been checked
         * @description Every sign of a submittal has been checked; again whenever that is so after a change.
         */
        post: operations["onSubmittalChecked"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "submittal.cancelled": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * A submittal was cancelled
         * @description A submittal was cancelled before every sign had been checked.
         */
        post: operations["onSubmittalCancelled"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "endpoint.test": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * An address is tried
         * @description Sent when it was asked for, to try an address.
         */
        post: operations["onEndpointTest"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
}
export interface components {
    schemas: {
        /** @description Readings that were added after the upload. */
        AddedMeasurement: {
            id: string;
            measured: components["schemas"]["MeasuredDescription"];
            author: string;
            /** @description ISO 8601, UTC. */
            at: string;
        };
        /** @description Something that was not said and had to be assumed. */
        Assumption: {
            /** @description One word: `scale`, `part`, `conflict` and so on. */
            about: string;
            text: string;
        };
        /** @description A frame on the panel. */
        BorderDescription: {
            /** @description Outer edge. */
            box: components["schemas"]["BoxDescription"];
            /** @description Thickness of the frame. */
            width?: components["schemas"]["Length"];
            raised?: boolean;
            colour?: components["schemas"]["ColourDescription"];
        };
        /** @description A frame on the panel. */
        BorderDescriptionInput: {
            /** @description Outer edge. */
            box: components["schemas"]["BoxDescriptionInput"];
            /** @description Thickness of the frame. */
            width?: components["schemas"]["LengthInput"];
            raised?: boolean;
            colour?: components["schemas"]["ColourDescriptionInput"];
        };
        /** @description A box on the sign, in millimetres, y down. */
        Box: {
            /** @description Left edge, mm from the left edge of the panel. */
            x: number;
            /** @description Top edge, mm down from the top edge of the panel. */
            y: number;
            /** @description Width, mm. */
            width: number;
            /** @description Height, mm. */
            height: number;
        };
        /** @description An upright rectangle: its left and top edge and its size. */
        BoxDescription: {
            x: components["schemas"]["Coordinate"];
            y: components["schemas"]["Coordinate"];
            width: components["schemas"]["Length"];
            height: components["schemas"]["Length"];
        };
        /** @description An upright rectangle: its left and top edge and its size. */
        BoxDescriptionInput: {
            x: components["schemas"]["CoordinateInput"];
            y: components["schemas"]["CoordinateInput"];
            width: components["schemas"]["LengthInput"];
            height: components["schemas"]["LengthInput"];
        };
        /** @description A block of braille. */
        BrailleDescription: {
            /** @description The print text, or the cells themselves as Unicode braille. */
            text?: string;
            /** @description The same line by line; absent: one line. */
            lines?: string[];
            /**
             * @description Absent: contracted Unified English Braille.
             * @enum {string}
             */
            code?: "ueb-contracted" | "ueb-uncontracted";
            dotBaseDiameter?: components["schemas"]["Length"];
            dotHeight?: components["schemas"]["Length"];
            /** @enum {string} */
            dotShape?: "domed" | "rounded" | "flat" | "pointed";
            /** @description Between dots of one cell, centre to centre. */
            dotSpacing?: components["schemas"]["Length"];
            /** @description Between the same dots of neighbouring cells. */
            cellSpacing?: components["schemas"]["Length"];
            /** @description Between the same dots of neighbouring lines. */
            lineSpacing?: components["schemas"]["Length"];
            /** @description Centre of dot 1 of the first cell. */
            origin?: components["schemas"]["PointDescription"];
            /**
             * @description How the braille stands under the text that it repeats.
             * @enum {string}
             */
            alignment?: "flush-left" | "centred" | "flush-right" | "other";
            /**
             * @description What the braille is made on, where a code tells its sizes by that.
             * @enum {string}
             */
            carrier?: "paper" | "sticker" | "pvc" | "stainless-steel" | "other";
        };
        /** @description A block of braille. */
        BrailleDescriptionInput: {
            /** @description The print text, or the cells themselves as Unicode braille. */
            text?: string;
            /** @description The same line by line; absent: one line. */
            lines?: string[];
            /**
             * @description Absent: contracted Unified English Braille.
             * @enum {string}
             */
            code?: "ueb-contracted" | "ueb-uncontracted";
            dotBaseDiameter?: components["schemas"]["LengthInput"];
            dotHeight?: components["schemas"]["LengthInput"];
            /** @enum {string} */
            dotShape?: "domed" | "rounded" | "flat" | "pointed";
            /** @description Between dots of one cell, centre to centre. */
            dotSpacing?: components["schemas"]["LengthInput"];
            /** @description Between the same dots of neighbouring cells. */
            cellSpacing?: components["schemas"]["LengthInput"];
            /** @description Between the same dots of neighbouring lines. */
            lineSpacing?: components["schemas"]["LengthInput"];
            /** @description Centre of dot 1 of the first cell. */
            origin?: components["schemas"]["PointDescriptionInput"];
            /**
             * @description How the braille stands under the text that it repeats.
             * @enum {string}
             */
            alignment?: "flush-left" | "centred" | "flush-right" | "other";
            /**
             * @description What the braille is made on, where a code tells its sizes by that.
             * @enum {string}
             */
            carrier?: "paper" | "sticker" | "pvc" | "stainless-steel" | "other";
        };
        /** @description What a report comes to. */
        BriefReport: {
            id: string;
            /** @description Of the sign. It may be an earlier one while the sign is queued. */
            revision: number;
            verdict: components["schemas"]["Verdict"];
            /** @description The same, for each stage alone. */
            stages: {
                drawing: components["schemas"]["Verdict"];
                product: components["schemas"]["Verdict"];
                site: components["schemas"]["Verdict"];
            };
            /** @description How many findings of each verdict, whatever their force. */
            summary: {
                pass: number;
                fail: number;
                undetermined: number;
                notApplicable: number;
            };
            /** @description Where the whole report is. */
            address: string;
        };
        /** @description Capability indices (NIST/SEMATECH e-Handbook, 6.1.6); rough with fewer than some fifty readings. */
        Capability: {
            /** @description Room between the limits over six standard deviations; null with one limit. */
            cp: number | null;
            /** @description Distance of the mean from the nearer limit over three standard deviations. */
            cpk: number;
            /** @description Lower confidence limit of `cpk`. */
            cpkMin: number;
            /** @description Upper confidence limit of `cpk`. */
            cpkMax: number;
            /** @description How surely `cpk` lies between them. */
            confidence: number;
        };
        /** @description One requirement that was put right. */
        Change: {
            /** @description The requirement that failed and does not any more. */
            requirement: string;
            /** @description The worst single value before, in `unit`; cells, a colour or a kind where there is no number. */
            from: number | string | boolean | null;
            /** @description The same afterwards; null when the requirement does not apply any more. */
            to: number | string | boolean | null;
            /** @description The unit of both, as in a finding. */
            unit: string;
            /** @description The change for people. */
            text: string;
        };
        /** @description The same as parts of a form. */
        CheckForm: {
            /** @description The SVG file. */
            drawing?: string;
            /** @description Instead of a drawing: the drilling program. */
            program?: string;
            sign?: components["schemas"]["SignDescriptionInput"];
            /** @description Ids parted by commas, or a JSON array. */
            standards?: string;
            options?: components["schemas"]["CheckOptionsInput"];
        };
        /** @description How to read the drawing and how to decide. */
        CheckOptions: {
            /** @description Which part a layer, id or class of the drawing is. */
            part?: {
                [key: string]: "raised" | "visual" | "both" | "braille" | "pictogram" | "border" | "panel" | "ignore";
            };
            /** @description Millimetres per user unit, for a drawing that has no scale. */
            scale?: number;
            /** @description Millimetres, of the dots that a drilling program makes: it does not tell their size. */
            dotBaseDiameter?: number;
            /**
             * @description `guarded`: a value within its uncertainty of a limit is undetermined.
             * @enum {string}
             */
            decisionRule?: "simple" | "guarded";
            /**
             * @description `both`: a value must pass in inches and in millimetres as printed.
             * @enum {string}
             */
            unitSystem?: "printed" | "both";
            /** @enum {string} */
            language?: "en";
            /**
             * @description What the sign is for, when there is no description that says so.
             * @enum {string}
             */
            use?: "permanent-room" | "exit-door" | "elevator-landing" | "elevator-car-control" | "directional" | "informational" | "parking" | "transit-station" | "symbol-of-accessibility" | "temporary" | "occupant-name" | "directory" | "gift";
            properNames?: string[];
            /** @description Of several panels on one sheet, the one that is the sign: its number or its id. */
            panel?: string | number;
        };
        /** @description How to read the drawing and how to decide. */
        CheckOptionsInput: {
            /** @description Which part a layer, id or class of the drawing is. */
            part?: {
                [key: string]: "raised" | "visual" | "both" | "braille" | "pictogram" | "border" | "panel" | "ignore";
            };
            /** @description Millimetres per user unit, for a drawing that has no scale. */
            scale?: number;
            /** @description Millimetres, of the dots that a drilling program makes: it does not tell their size. */
            dotBaseDiameter?: number;
            /**
             * @description `guarded`: a value within its uncertainty of a limit is undetermined.
             * @enum {string}
             */
            decisionRule?: "simple" | "guarded";
            /**
             * @description `both`: a value must pass in inches and in millimetres as printed.
             * @enum {string}
             */
            unitSystem?: "printed" | "both";
            /** @enum {string} */
            language?: "en";
            /**
             * @description What the sign is for, when there is no description that says so.
             * @enum {string}
             */
            use?: "permanent-room" | "exit-door" | "elevator-landing" | "elevator-car-control" | "directional" | "informational" | "parking" | "transit-station" | "symbol-of-accessibility" | "temporary" | "occupant-name" | "directory" | "gift";
            properNames?: string[];
            /** @description Of several panels on one sheet, the one that is the sign: its number or its id. */
            panel?: string | number;
        };
        /**
         * @description One sign as a description, a drawing or both, and the standards to hold it against.
         * @example {
         *       "standards": [
         *         "us-ada-2010"
         *       ],
         *       "sign": {
         *         "units": "mm",
         *         "mark": "P-117",
         *         "use": "permanent-room",
         *         "panel": {
         *           "width": 230,
         *           "height": 120,
         *           "finish": "matte",
         *           "colour": "#f4f1e6"
         *         },
         *         "lettering": [
         *           {
         *             "part": "both",
         *             "text": "POTTERY 117",
         *             "typeface": {
         *               "family": "Open Sans",
         *               "style": "sans-serif"
         *             },
         *             "characterProportion": 0.9,
         *             "characterHeight": 19,
         *             "strokeThickness": 2.6,
         *             "relief": 0.9,
         *             "section": "straight",
         *             "characterSpacing": 3.5,
         *             "colour": "#16324f",
         *             "baseline": {
         *               "x": 20,
         *               "y": 45
         *             }
         *           }
         *         ],
         *         "braille": [
         *           {
         *             "text": "pottery 117",
         *             "code": "ueb-contracted",
         *             "dotBaseDiameter": 1.55,
         *             "dotHeight": 0.75,
         *             "dotShape": "domed",
         *             "dotSpacing": 2.4,
         *             "cellSpacing": 6.9,
         *             "origin": {
         *               "x": 20,
         *               "y": 70
         *             }
         *           }
         *         ],
         *         "pictograms": [],
         *         "borders": [],
         *         "properNames": [],
         *         "installation": {
         *           "panelBottomHeight": 1350,
         *           "side": "latch",
         *           "approach": "interior",
         *           "door": {
         *             "leafWidth": 915,
         *             "swing": "toward-reader",
         *             "latchToTextCentre": 280
         *           }
         *         }
         *       }
         *     }
         */
        CheckRequest: {
            /**
             * @description Ids of standards; `id@revision` pins one to a revision.
             * @example [
             *       "us-ada-2010"
             *     ]
             */
            standards?: string[];
            sign?: components["schemas"]["SignDescriptionInput"];
            /** @description An SVG document as text. */
            drawing?: string;
            /** @description Instead of a drawing: a drilling program as text. */
            program?: string;
            options?: components["schemas"]["CheckOptionsInput"];
        };
        /** @description Where the requirement was read. */
        Citation: {
            /** @description The document in which the row was read; the `sources` of the standard say where it is published. */
            document: string;
            /** @description The clause, or the exception that was used. */
            clause: string;
            /** @description The clause that puts this one in force. */
            scopedBy: string;
            /**
             * @description How surely the row is known: `verified` was read in the document itself.
             * @enum {string}
             */
            confidence: "verified" | "secondary" | "earlier-edition" | "our-reading";
            /** @description What to know about the reading of this clause. */
            note: string | null;
        };
        /**
         * @description An opaque CSS colour, or a light reflectance value from 0 (black) to 100 (white).
         * @example #1d2b3a
         * @example {
         *       "lrv": 12
         *     }
         */
        ColourDescription: string | {
            lrv: number;
        };
        /**
         * @description An opaque CSS colour, or a light reflectance value from 0 (black) to 100 (white).
         * @example #1d2b3a
         * @example {
         *       "lrv": 12
         *     }
         */
        ColourDescriptionInput: string | {
            lrv: number;
        };
        /** @description A size with a name, which no code asks of a sign. */
        CommonAdvice: {
            requirement: string;
            clause: string;
            quantity: string;
            limit: components["schemas"]["PublishedLimit"];
            /** @description Whether the whole size lies in the common window; null where there is no such window. */
            within: boolean | null;
        };
        /** @description A row of which only a sign can tell whether it is in force. */
        CommonConditional: {
            requirement: string;
            clause: string;
            quantity: string;
            /** @description What a sign decides. */
            when: string[];
            /** @description It would relax the requirement, which is in the windows as it stands. */
            exception: boolean;
            /** @description Null: the exception sets the requirement aside. */
            limit: components["schemas"]["PublishedLimit"] | null;
            text: string;
        };
        /** @description A smallest set of rows that exclude each other. */
        CommonConflict: {
            quantity: string;
            /** @description All that take part, when the rows tie several together. */
            quantities: string[];
            standards: string[];
            requirements: string[];
            /** @description In the order of the requirements. */
            clauses: string[];
            /** @description The same for people. */
            text: string;
        };
        /** @description An interval; without an end it is open on that side. */
        CommonEnds: {
            min?: number;
            max?: number;
        };
        /** @description Two quantities of which one narrows the window of the other. */
        CommonJoint: {
            quantities: string[];
            /** @description How the quantities hang together. */
            relation: string;
            /** @description Least radius, mm. */
            min?: number;
            /** @description Greatest radius, mm. */
            max?: number;
            /** @description The requirements that it comes from. */
            from: string[];
            /** @description What is left of the window of the dot height at each end of that of the base diameter; may be in two pieces. */
            corners: {
                dotBaseDiameter: number;
                dotHeight: components["schemas"]["CommonEnds"][];
            }[];
            /** @description Values well inside; null where a window is open. */
            example: {
                dotBaseDiameter: number;
                dotHeight: number;
            } | null;
        };
        /** @description What satisfies every row in force on one quantity, as far as nothing else ties it. */
        CommonWindow: {
            quantity: string;
            /** @enum {string} */
            unit: "mm" | "ratio" | "count" | "lx" | "gloss-units" | "kind" | "truth";
            min?: number;
            max?: number;
            /** @description The kinds that pass everywhere, when `unit` is `kind`. */
            kinds?: string[];
            /** @description Kinds that fail nowhere and that a person must judge somewhere. */
            judgement?: string[];
            /** @description Only lettering of these parts is concerned. */
            parts?: ("raised" | "visual" | "both")[];
            /** @description Only characters with these sections are concerned. */
            sections?: ("straight" | "bevelled" | "rounded" | "other")[];
            /** @description The requirements that it comes from. */
            from: string[];
        };
        /** @description What satisfies several standards at once, before there is a sign. */
        CommonWindows: {
            /** @enum {string} */
            use: "permanent-room" | "exit-door" | "elevator-landing" | "elevator-car-control" | "directional" | "informational" | "parking" | "transit-station" | "symbol-of-accessibility" | "temporary" | "occupant-name" | "directory" | "gift";
            carrier: ("paper" | "sticker" | "pvc" | "stainless-steel" | "other") | null;
            standards: {
                id: string;
                revision: number;
                title: string;
                /** @enum {string} */
                kind: "code" | "standard" | "guidance" | "reference-geometry";
                digest: string;
                /** @description How many of its rows are in the windows; 0 when it asks nothing for this use. */
                inForce: number;
            }[];
            windows: components["schemas"]["CommonWindow"][];
            joint: components["schemas"]["CommonJoint"][];
            conflicts: components["schemas"]["CommonConflict"][];
            conditional: components["schemas"]["CommonConditional"][];
            /** @description Sizes of the reference geometries that were named, and no rule of a sign. */
            advice: components["schemas"]["CommonAdvice"][];
        };
        /** @description How surely a measured value keeps its limit. */
        Conformity: {
            /** @description The single value that was judged, in `unit`: the one nearest to a limit, or beyond it. */
            value: number;
            /** @description Twice the standard uncertainty (k = 2), in `unit`: the width of a guard band. */
            expandedUncertainty: number;
            /** @description How probable it is that the true value keeps the limit, given this value alone (JCGM 106:2012, 7). */
            probability: number;
            /**
             * @description What the guarded rule says of this value, whichever rule was asked for (JCGM 106:2012, 8.3).
             * @enum {string}
             */
            guarded: "pass" | "fail" | "within-uncertainty";
            /** @description What this rests on, for people. */
            assumption: string;
        };
        /**
         * @description A place along an axis, written like a length: x to the right, y down, from the panel’s top left corner.
         * @example 20
         * @example {
         *       "value": 0.75,
         *       "unit": "in"
         *     }
         */
        Coordinate: number | {
            value: number;
            /** @enum {string} */
            unit: "mm" | "in";
        };
        /**
         * @description A place along an axis, written like a length: x to the right, y down, from the panel’s top left corner.
         * @example 20
         * @example {
         *       "value": 0.75,
         *       "unit": "in"
         *     }
         */
        CoordinateInput: number | {
            value: number;
            /** @enum {string} */
            unit: "mm" | "in";
        };
        /** @description A drawing put right, with what was changed and what was not. */
        Correction: {
            /** @description The drawing; the same text as was sent, but for what was put right. */
            drawing: string;
            changes: components["schemas"]["Change"][];
            notCorrected: components["schemas"]["NotCorrected"][];
            /** @description The check of the very drawing that is answered. */
            report: components["schemas"]["Report"];
        };
        /**
         * @description A length that may be zero, written like every length.
         * @example 250
         * @example {
         *       "value": 48,
         *       "unit": "in"
         *     }
         */
        Distance: number | {
            value: number;
            /** @enum {string} */
            unit: "mm" | "in";
        };
        /**
         * @description A length that may be zero, written like every length.
         * @example 250
         * @example {
         *       "value": 48,
         *       "unit": "in"
         *     }
         */
        DistanceInput: number | {
            value: number;
            /** @enum {string} */
            unit: "mm" | "in";
        };
        /** @description The door that the sign belongs to. */
        DoorDescription: {
            /**
             * @description One leaf or two in the doorway.
             * @enum {string}
             */
            leaves?: "single" | "double";
            leafWidth?: components["schemas"]["Length"];
            /** @enum {string} */
            swing?: "toward-reader" | "away" | "sliding" | "none";
            /** @description Along the wall, from the latch edge of the closed leaf to the middle of all tactile characters and braille. */
            latchToTextCentre?: components["schemas"]["Distance"];
            /** @description Whether there is wall for the sign beside the latch; at two active leaves, to the right of them. */
            wallAtLatch?: boolean;
            /** @description From the latch edge of the closed leaf to the inner corner, for a sign on the adjacent wall. */
            latchToCorner?: components["schemas"]["Distance"];
            /** @description From the sign’s nearest edge to the architrave of the door. */
            edgeToArchitrave?: components["schemas"]["Distance"];
            /** @description From the sign’s nearest edge to the jamb of the door. */
            edgeToJamb?: components["schemas"]["Distance"];
            /** @description Finish floor to the door’s handle. */
            handleHeight?: components["schemas"]["Length"];
        };
        /** @description The door that the sign belongs to. */
        DoorDescriptionInput: {
            /**
             * @description One leaf or two in the doorway.
             * @enum {string}
             */
            leaves?: "single" | "double";
            leafWidth?: components["schemas"]["LengthInput"];
            /** @enum {string} */
            swing?: "toward-reader" | "away" | "sliding" | "none";
            /** @description Along the wall, from the latch edge of the closed leaf to the middle of all tactile characters and braille. */
            latchToTextCentre?: components["schemas"]["DistanceInput"];
            /** @description Whether there is wall for the sign beside the latch; at two active leaves, to the right of them. */
            wallAtLatch?: boolean;
            /** @description From the latch edge of the closed leaf to the inner corner, for a sign on the adjacent wall. */
            latchToCorner?: components["schemas"]["DistanceInput"];
            /** @description From the sign’s nearest edge to the architrave of the door. */
            edgeToArchitrave?: components["schemas"]["DistanceInput"];
            /** @description From the sign’s nearest edge to the jamb of the door. */
            edgeToJamb?: components["schemas"]["DistanceInput"];
            /** @description Finish floor to the door’s handle. */
            handleHeight?: components["schemas"]["LengthInput"];
        };
        /** @description The head that sets one dot at each plunge. What is absent is assumed, and said. */
        DotHead: {
            /** @description Of the end that comes down to the dot. */
            tipDiameter?: number;
            /** @description Of what carries the tip, seen from above. */
            bodyDiameter?: number;
            /** @description From the end of the tip up to the lower end of the body. */
            bodyClearance?: number;
            /** @description Middle of the body from the middle of the tip, y down. Absent: none. */
            offset?: {
                x: number;
                y: number;
            };
            /** @description Height of the tip above the surface on its way from dot to dot. Below it no part may stand over a laid dot. */
            lift?: number;
            /** @description How far the tip goes down from there to set a dot. */
            plunge?: number;
            /** @description The last piece of the way down comes in sideways. Absent: straight down. */
            approach?: {
                /** @description Degrees, clockwise as seen, from the x axis to where the tip comes from, seen from the dot. */
                angle: number;
                /** @description Along the surface. */
                length: number;
                /** @description How far the tip comes down on that piece: more than nothing, at most the plunge. */
                height: number;
            };
        };
        /** @description How fast the machine goes. */
        DotMachine: {
            /** @description From dot to dot. */
            travelRate?: number;
            /** @description Down and up. */
            plungeRate?: number;
            /** @description Seconds at the bottom. */
            dwell?: number;
            /** @description Millimetres per second squared; absent: full rate at once. */
            acceleration?: number;
        };
        /** @description The order in which dots are set, and what it takes. */
        DotPlan: {
            dots: number;
            /** @description The dots in the order in which they are set. */
            sequence: [
                number,
                number
            ][];
            cartridges: {
                /** @description Place in `sequence` of its first dot. */
                from: number;
                /** @description Place in `sequence` of its last dot. */
                to: number;
                dots: number;
                volume: number | null;
                /**
                 * @description What is whole where the cartridge is changed; `end`: it is the last.
                 * @enum {string}
                 */
                after: "block" | "line" | "word" | "cell" | "dot" | "end";
            }[];
            /** @description From the first dot to the last, without changes of cartridges. */
            seconds: number;
            /** @description Length of the way from dot to dot, at the lift height. */
            travel: number;
            /** @description No order of these dots is shorter, with or without regard to laid dots. */
            travelLowerBound: number;
            /** @description How much longer the travel is than that, as a share; null where it is 0. */
            travelGap: number | null;
            /** @description The same way in columns from left to right, each from top to bottom. */
            baselineTravel: number;
            baselineSeconds: number;
            /** @description Whether the columns keep the head off laid dots as well as this order does. */
            baselineAllowed: boolean;
            /** @description Cubic millimetres of all domes; null where their size is not known. */
            volume: number | null;
            zero: {
                x: number;
                y: number;
                /** @enum {string} */
                of: "panel" | "drawing" | "points";
                text: string;
            };
            head: {
                tipDiameter: number;
                bodyDiameter: number;
                bodyClearance: number;
                lift: number;
                plunge: number;
                offset: {
                    x: number;
                    y: number;
                } | null;
                approach: {
                    angle: number;
                    length: number;
                    height: number;
                } | null;
            };
            machine: {
                travelRate: number;
                plungeRate: number;
                dwell: number;
                acceleration: number | null;
            };
            dot: {
                baseDiameter: number;
                height: number;
            };
            assumptions: {
                about: string;
                text: string;
            }[];
            warnings: {
                /** @enum {string} */
                kind: "dots-merge" | "tip-over-dot" | "body-over-dot" | "ring" | "near-wall" | "near-edge" | "below-surface" | "lift-below-letters" | "unread" | "split-in-cell" | "split-unknown";
                /** @description How many dots, pairs or parts it is about. */
                count: number;
                text: string;
                /** @description Places in `sequence` of the first of them; pairs follow one another. */
                dots: number[];
            }[];
            cautions: string[];
        };
        /** @description The dots to set, and what sets them. Millimetres. */
        DotPlanRequest: {
            /** @description Middles of the dots, x to the right and y down. */
            points?: [
                number,
                number
            ][];
            /** @description An SVG document as text. */
            drawing?: string;
            sign?: components["schemas"]["SignDescriptionInput"];
            /** @description How to read the drawing, as in a check. */
            options?: components["schemas"]["CheckOptionsInput"];
            head?: components["schemas"]["DotHead"];
            machine?: components["schemas"]["DotMachine"];
            /** @description How many dots one filling gives. Absent: all of them. */
            cartridge?: {
                dots: number;
            };
            dot?: components["schemas"]["LaidDot"];
            /**
             * @description Of the program: `dry-run` goes the same way, raised above the surface.
             * @enum {string}
             */
            variant?: "real" | "dry-run";
            /**
             * @description Of the program; absent: millimetres.
             * @enum {string}
             */
            units?: "mm" | "in";
            /**
             * @description Of the program: drilling cycles, or plain moves for a control that has none. Absent: cycles.
             * @enum {string}
             */
            moves?: "cycles" | "plain";
        };
        /** @description A drawing that passes its own check at the drawing stage. */
        DrawingAnswer: {
            /** @description The SVG document, at true scale. */
            drawing: string;
            /** @description What belongs to the drawing and no drawing shows: send both to a check. */
            sign: components["schemas"]["SignDescription"];
            /** @description The check of this drawing with this description. */
            report: components["schemas"]["Report"];
        };
        /**
         * @description A sign to be drawn, and all the standards that the drawing is to satisfy.
         * @example {
         *       "standards": [
         *         "us-ada-2010"
         *       ],
         *       "sign": {
         *         "use": "permanent-room",
         *         "lettering": [
         *           {
         *             "text": "Seed Library"
         *           }
         *         ]
         *       }
         *     }
         */
        DrawingRequest: {
            /**
             * @description Ids of standards; `id@revision` pins one to a revision.
             * @example [
             *       "us-ada-2010"
             *     ]
             */
            standards?: string[];
            sign: components["schemas"]["SignOrder"];
            /** @description Also take a drawing of which a person must still judge something, such as a code of braille that is not read here. Nothing of it fails. */
            leaveToPerson?: boolean;
        };
        /** @description Sent when it was asked for, to try an address. */
        EndpointTestMessage: {
            /** @constant */
            type: "endpoint.test";
            /** @description ISO 8601, UTC. */
            timestamp: string;
            data: {
                webhook: string;
            };
        };
        /** @description What made the report. */
        Engine: {
            /** @description Version of this service. */
            version: string;
            braille: {
                name: string;
                version: string;
                /** @description The translation table used for each braille code. */
                tables: {
                    [key: string]: string;
                };
                /** @description Digest of the tables. */
                digest: string;
            };
        };
        /** @description One requirement judged on one sign. */
        Finding: {
            /** @description `<standard>/<clause>/<slug>`. */
            requirement: string;
            clause: string;
            title: string;
            /** @description What the clause asks for, in our own words. */
            asks: string;
            /**
             * @description Only `shall` decides a verdict.
             * @enum {string}
             */
            force: "shall" | "should" | "advice";
            stage: components["schemas"]["Stage"];
            quantity: string;
            limit: components["schemas"]["Limit"];
            citation: components["schemas"]["Citation"];
            verdict: components["schemas"]["Verdict"];
            /** @description Null unless undetermined. */
            reason: components["schemas"]["Reason"] | null;
            /** @description Null when nothing could be measured. */
            measured: components["schemas"]["Measured"] | null;
            /** @description Distance of the worst single value inside (+) or outside (-) the nearer limit, in the unit of the limit. */
            margin: number | null;
            unitSplit: components["schemas"]["UnitSplit"] | null;
            /** @description The offenders of a failure, or what left it undetermined. */
            where: components["schemas"]["Place"][];
            /** @description How many places there are; `where` lists at most a hundred of them. */
            whereTotal: number;
            /** @description The finding for people. */
            message: string;
            /** @description Null unless failed. */
            remedy: components["schemas"]["Remedy"] | null;
            /** @description The same for the same finding on the same sign, whatever else changes. */
            fingerprint: string;
        };
        /** @description All is well. */
        Health: {
            /** @constant */
            status: "ok";
        };
        /** @description Every change of a submittal, in a chain of hashes. */
        History: {
            submittal: string;
            /** @description Whether every hash is what it must be. */
            intact: boolean;
            /** @description The first event that is not what it must be. */
            brokenAt: number | null;
            /** @description Hash of the last event: who has noted it can tell later that nothing before it was changed. */
            head: string;
            method: string;
            events: {
                number: number;
                /** @description ISO 8601, UTC. */
                at: string;
                actor: string;
                /** @enum {string} */
                kind: "submittal-created" | "signs-added" | "sign-checked" | "sign-not-checked" | "sign-removed" | "measurements-added" | "installation-changed" | "waiver-added" | "waiver-withdrawn" | "note-added" | "submittal-checked" | "submittal-cancelled";
                data: {
                    [key: string]: unknown;
                };
                previous: string;
                hash: string;
            }[];
        };
        /** @description An element of the drawing that was not looked at. */
        Ignored: {
            source: components["schemas"]["Source"];
            why: string;
        };
        /** @description Where and how the sign hangs. */
        InstallationDescription: {
            /** @description Finish floor to the panel’s lower edge. */
            panelBottomHeight?: components["schemas"]["Distance"];
            /** @enum {string} */
            side?: "latch" | "hinge" | "inactive-leaf" | "right-of-double-doors" | "nearest-adjacent-wall" | "on-door-push-side";
            /** @enum {string} */
            approach?: "interior" | "exterior";
            viewingDistance?: components["schemas"]["Length"];
            door?: components["schemas"]["DoorDescription"];
            /** @description Absent: not known; empty: none. */
            neighbouringDoors?: components["schemas"]["NeighbouringDoorDescription"][];
            /** @description Along the wall, from the middle of the tactile characters to an inner corner of the room. */
            innerCorner?: components["schemas"]["Distance"];
            /** @description Of the wall round the sign. */
            wallColour?: components["schemas"]["ColourDescription"];
            /** @description Least clear wall all round the sign. */
            clearWall?: components["schemas"]["Distance"];
            /** @description How near to the sign a reader can come without meeting an obstruction or standing in the swing of a door. */
            nearestApproach?: components["schemas"]["Distance"];
            /**
             * @description At an elevator entrance: whether both jambs carry the sign.
             * @enum {string}
             */
            jambs?: "both" | "one";
            /**
             * @description Of a control’s sign: where it stands at its control.
             * @enum {string}
             */
            controlSide?: "left" | "right" | "above" | "below" | "lower-left" | "on-control" | "other";
        };
        /** @description Where and how the sign hangs. */
        InstallationDescriptionInput: {
            /** @description Finish floor to the panel’s lower edge. */
            panelBottomHeight?: components["schemas"]["DistanceInput"];
            /** @enum {string} */
            side?: "latch" | "hinge" | "inactive-leaf" | "right-of-double-doors" | "nearest-adjacent-wall" | "on-door-push-side";
            /** @enum {string} */
            approach?: "interior" | "exterior";
            viewingDistance?: components["schemas"]["LengthInput"];
            door?: components["schemas"]["DoorDescriptionInput"];
            /** @description Absent: not known; empty: none. */
            neighbouringDoors?: components["schemas"]["NeighbouringDoorDescriptionInput"][];
            /** @description Along the wall, from the middle of the tactile characters to an inner corner of the room. */
            innerCorner?: components["schemas"]["DistanceInput"];
            /** @description Of the wall round the sign. */
            wallColour?: components["schemas"]["ColourDescriptionInput"];
            /** @description Least clear wall all round the sign. */
            clearWall?: components["schemas"]["DistanceInput"];
            /** @description How near to the sign a reader can come without meeting an obstruction or standing in the swing of a door. */
            nearestApproach?: components["schemas"]["DistanceInput"];
            /**
             * @description At an elevator entrance: whether both jambs carry the sign.
             * @enum {string}
             */
            jambs?: "both" | "one";
            /**
             * @description Of a control’s sign: where it stands at its control.
             * @enum {string}
             */
            controlSide?: "left" | "right" | "above" | "below" | "lower-left" | "on-control" | "other";
        };
        /** @description Where and how the sign hangs. */
        InstallationRequest: {
            /** @description Finish floor to the panel’s lower edge. */
            panelBottomHeight?: components["schemas"]["DistanceInput"];
            /** @enum {string} */
            side?: "latch" | "hinge" | "inactive-leaf" | "right-of-double-doors" | "nearest-adjacent-wall" | "on-door-push-side";
            /** @enum {string} */
            approach?: "interior" | "exterior";
            viewingDistance?: components["schemas"]["LengthInput"];
            door?: components["schemas"]["DoorDescriptionInput"];
            /** @description Absent: not known; empty: none. */
            neighbouringDoors?: components["schemas"]["NeighbouringDoorDescriptionInput"][];
            /** @description Along the wall, from the middle of the tactile characters to an inner corner of the room. */
            innerCorner?: components["schemas"]["DistanceInput"];
            /** @description Of the wall round the sign. */
            wallColour?: components["schemas"]["ColourDescriptionInput"];
            /** @description Least clear wall all round the sign. */
            clearWall?: components["schemas"]["DistanceInput"];
            /** @description How near to the sign a reader can come without meeting an obstruction or standing in the swing of a door. */
            nearestApproach?: components["schemas"]["DistanceInput"];
            /**
             * @description At an elevator entrance: whether both jambs carry the sign.
             * @enum {string}
             */
            jambs?: "both" | "one";
            /**
             * @description Of a control’s sign: where it stands at its control.
             * @enum {string}
             */
            controlSide?: "left" | "right" | "above" | "below" | "lower-left" | "on-control" | "other";
            /**
             * @description What every bare length means; absent: millimetres.
             * @enum {string}
             */
            units?: "mm" | "in";
        };
        /** @description A file, or a row of a schedule, that could not be used; the others were. */
        IntakeProblem: {
            file: string;
            /** @description Of a schedule, as a spreadsheet numbers it: the first row is 1. */
            row: number | null;
            /** @description Heading of the column. */
            column: string | null;
            detail: string;
        };
        /** @description One sign of a submittal with all that is kept about it. */
        KeptSign: {
            id: string;
            mark: string;
            location: string | null;
            door: string | null;
            /** @description Names of the files that it came from. */
            files: string[];
            /** @enum {string} */
            state: "queued" | "done" | "cancelled";
            /** @description Raised whenever something that is judged was added. */
            revision: number;
            /** @description Of the latest report; null without one. */
            verdict: components["schemas"]["Verdict"] | null;
            /** @description Why no report could be made. */
            problem: {
                /** @description The address of the page that explains this problem. */
                type: string;
                title: string;
                status: number;
                detail: string;
                errors?: {
                    detail: string;
                    /** @description JSON Pointer into the body. */
                    pointer?: string;
                    /** @description Name of the query parameter or of the part of the form. */
                    parameter?: string;
                    line?: number;
                    column?: number;
                }[];
                limit?: number;
                actual?: number;
                /** @description Of `cannot-satisfy`: what keeps the wish from being fulfilled. */
                conflicts?: {
                    /** @description What cannot be had; `panel.size` where the room is too small. */
                    quantity: string;
                    requirements: string[];
                    /** @description The same for people. */
                    text: string;
                }[];
            } | null;
            /** @description ISO 8601, UTC. */
            updatedAt: string;
            /** @description The latest report. */
            report: components["schemas"]["Report"] | null;
            /** @description Facts of its place that were added; they take the place of those described. */
            installation: components["schemas"]["InstallationDescription"] | null;
            measurements: components["schemas"]["AddedMeasurement"][];
            waivers: components["schemas"]["Waiver"][];
            notes: components["schemas"]["Note"][];
            /** @description Every report that was made of it, the latest first. */
            reports: components["schemas"]["ReportEntry"][];
        };
        /** @description An API key, without its secret. */
        Key: {
            id: string;
            label: string;
            /** @description `check`: ask for checks, readings, drawings and the other answers that keep nothing; `read`: read submittals and their evidence; `write`: create, change and delete submittals; `admin`: make, list and revoke the keys of the organisation, with any scope */
            scopes: ("check" | "read" | "write" | "admin")[];
            /** @description Requests a minute; null: as the service is set. */
            rate: number | null;
            /** @description ISO 8601, UTC. */
            createdAt: string;
            expiresAt: string | null;
            revokedAt: string | null;
            /** @description To the minute. */
            lastUsedAt: string | null;
        };
        /** @description The keys of the organisation, the oldest first, revoked and ended ones too. */
        KeyList: {
            keys: components["schemas"]["Key"][];
        };
        /** @description A key to be made. */
        KeyRequest: {
            /** @description What the history and the log call whoever uses it. */
            label: string;
            /** @description `check`: ask for checks, readings, drawings and the other answers that keep nothing; `read`: read submittals and their evidence; `write`: create, change and delete submittals; `admin`: make, list and revoke the keys of the organisation, with any scope */
            scopes: ("check" | "read" | "write" | "admin")[];
            expires?: string | null;
        };
        /** @description A dot as it stands when it is laid: a dome. */
        LaidDot: {
            baseDiameter?: number;
            height?: number;
        };
        /**
         * @description A length above zero: a bare number in the `units` of the description, or a value with its own unit.
         * @example 6.9
         * @example {
         *       "value": 0.1,
         *       "unit": "in"
         *     }
         */
        Length: number | {
            value: number;
            /** @enum {string} */
            unit: "mm" | "in";
        };
        /**
         * @description A length above zero: a bare number in the `units` of the description, or a value with its own unit.
         * @example 6.9
         * @example {
         *       "value": 0.1,
         *       "unit": "in"
         *     }
         */
        LengthInput: number | {
            value: number;
            /** @enum {string} */
            unit: "mm" | "in";
        };
        /** @description A run of characters. */
        LetteringDescription: {
            /**
             * @description Read by touch, by sight, or one set of characters for both. Absent: both; for a use that asks for nothing to be read by touch, visual.
             * @enum {string}
             */
            part?: "raised" | "visual" | "both";
            text?: string;
            /** @description The text line by line; absent: one line. */
            lines?: string[];
            typeface?: {
                family?: string;
                /** @enum {string} */
                style?: "sans-serif" | "serif" | "italic" | "oblique" | "script" | "decorative" | "unusual";
            };
            /** @description Width of O over height of I. */
            characterProportion?: number;
            /** @description Height of the capital I. */
            characterHeight?: components["schemas"]["Length"];
            strokeThickness?: components["schemas"]["Length"];
            /** @description Width of the stroke where it meets the background. */
            strokeThicknessAtBase?: components["schemas"]["Length"];
            /** @description Height of raised characters above the background. */
            relief?: components["schemas"]["Length"];
            /**
             * @description Cross section of a raised stroke.
             * @enum {string}
             */
            section?: "straight" | "bevelled" | "rounded" | "other";
            /** @description Least distance between the tops of neighbouring characters. */
            characterSpacing?: components["schemas"]["Length"];
            /** @description The same at the base, where the section is not straight. */
            characterSpacingAtBase?: components["schemas"]["Length"];
            /** @description Least gap between neighbouring words of one line. */
            wordSpacing?: components["schemas"]["Length"];
            /** @description Distance of successive baselines. */
            baselineSpacing?: components["schemas"]["Length"];
            /**
             * @description How the lines stand: among each other, or one line on the panel.
             * @enum {string}
             */
            alignment?: "flush-left" | "centred" | "flush-right" | "other";
            /**
             * @description Absent: the panel’s.
             * @enum {string}
             */
            finish?: "non-glare" | "matte" | "eggshell" | "satin" | "glossy";
            colour?: components["schemas"]["ColourDescription"];
            /** @description Left end of the first line’s baseline. */
            baseline?: components["schemas"]["PointDescription"];
        };
        /** @description A run of characters. */
        LetteringDescriptionInput: {
            /**
             * @description Read by touch, by sight, or one set of characters for both. Absent: both; for a use that asks for nothing to be read by touch, visual.
             * @enum {string}
             */
            part?: "raised" | "visual" | "both";
            text?: string;
            /** @description The text line by line; absent: one line. */
            lines?: string[];
            typeface?: {
                family?: string;
                /** @enum {string} */
                style?: "sans-serif" | "serif" | "italic" | "oblique" | "script" | "decorative" | "unusual";
            };
            /** @description Width of O over height of I. */
            characterProportion?: number;
            /** @description Height of the capital I. */
            characterHeight?: components["schemas"]["LengthInput"];
            strokeThickness?: components["schemas"]["LengthInput"];
            /** @description Width of the stroke where it meets the background. */
            strokeThicknessAtBase?: components["schemas"]["LengthInput"];
            /** @description Height of raised characters above the background. */
            relief?: components["schemas"]["LengthInput"];
            /**
             * @description Cross section of a raised stroke.
             * @enum {string}
             */
            section?: "straight" | "bevelled" | "rounded" | "other";
            /** @description Least distance between the tops of neighbouring characters. */
            characterSpacing?: components["schemas"]["LengthInput"];
            /** @description The same at the base, where the section is not straight. */
            characterSpacingAtBase?: components["schemas"]["LengthInput"];
            /** @description Least gap between neighbouring words of one line. */
            wordSpacing?: components["schemas"]["LengthInput"];
            /** @description Distance of successive baselines. */
            baselineSpacing?: components["schemas"]["LengthInput"];
            /**
             * @description How the lines stand: among each other, or one line on the panel.
             * @enum {string}
             */
            alignment?: "flush-left" | "centred" | "flush-right" | "other";
            /**
             * @description Absent: the panel’s.
             * @enum {string}
             */
            finish?: "non-glare" | "matte" | "eggshell" | "satin" | "glossy";
            colour?: components["schemas"]["ColourDescriptionInput"];
            /** @description Left end of the first line’s baseline. */
            baseline?: components["schemas"]["PointDescriptionInput"];
        };
        /** @description What is allowed. */
        Limit: {
            /** @description Least value allowed, in `unit`, as it was used. */
            min: number | null;
            /** @description Greatest value allowed, in `unit`, as it was used. */
            max: number | null;
            /** @description The kinds that pass, when `unit` is `kind`. */
            allowed: string[] | null;
            unit: components["schemas"]["Unit"];
            /** @description The limit as the standard prints it. */
            printed: string;
        };
        /** @description What was found on the sign. */
        Measured: {
            /** @description In `unit`; the mean where it stands for several; `true` for a length that nothing limits. */
            value: number | string | boolean;
            unit: components["schemas"]["Unit"];
            /** @description `value` in inches; null when it is not a length. */
            inches: number | null;
            /** @description Least single value, in `unit`. */
            min: number | null;
            /** @description Greatest single value, in `unit`. */
            max: number | null;
            /** @description How many single values were looked at. */
            count: number;
            /** @description Standard uncertainty of `value` (k = 1), in `unit`; null when unknown. */
            uncertainty: number | null;
            /**
             * @description Said by the client, taken from the drawing, or measured with an instrument.
             * @enum {string}
             */
            basis: "declared" | "drawn" | "measured";
            /** @description What it was measured with, when the client said so. */
            instrument: string | null;
            /** @description How it was got, for people. */
            method: string;
            /** @description Only of a value that was measured with a stated uncertainty. */
            conformity?: components["schemas"]["Conformity"];
            /** @description Only where two or more values were measured. */
            sample?: components["schemas"]["Sample"];
        };
        /** @description Values read with an instrument; they win over declared ones. */
        MeasuredDescription: {
            /** @enum {string} */
            quantity: "border.width" | "braille.borderClearance" | "braille.bottomOffset" | "braille.cellSpacing" | "braille.characterClearance" | "braille.domeRadius" | "braille.dotBaseDiameter" | "braille.dotHeight" | "braille.dotSpacing" | "braille.leftOffset" | "braille.lineSpacing" | "braille.textGap" | "braille.variation" | "braille.wordGap" | "contrast.characters" | "contrast.charactersByBackground" | "contrast.charactersByBowmanSapolinski" | "contrast.charactersByDifference" | "contrast.charactersByMichelson" | "contrast.lighterReflectance" | "contrast.pictogram" | "contrast.pictogramByBackground" | "contrast.pictogramByBowmanSapolinski" | "contrast.pictogramByDifference" | "contrast.pictogramByLighter" | "contrast.pictogramByMichelson" | "contrast.reflectance" | "contrast.symbol" | "contrast.wallByBackground" | "contrast.wallByBowmanSapolinski" | "contrast.wallByDifference" | "contrast.wallByLighter" | "contrast.wallByMichelson" | "installation.aboveHandle" | "installation.architraveDistance" | "installation.brailleBaselineHighest" | "installation.brailleBaselineLowest" | "installation.brailleHighest" | "installation.centreHeight" | "installation.clearWall" | "installation.floorSpace" | "installation.headroom" | "installation.highestBaseline" | "installation.highestTactile" | "installation.jambDistance" | "installation.lowestBaseline" | "installation.lowestTactile" | "installation.overhang" | "installation.raisedLowestBaseline" | "installation.reach" | "installation.tactileLine" | "installation.topHeight" | "pictogram.count" | "pictogram.fieldHeight" | "pictogram.fieldWidth" | "pictogram.figureHeight" | "raised.borderClearance" | "raised.characterHeight" | "raised.characterSpacing" | "raised.characterSpacingAtBase" | "raised.characterSpacingInStrokes" | "raised.lineSpacing" | "raised.proportion" | "raised.relief" | "raised.strokeAtBase" | "raised.strokeThickness" | "raised.strokeWidth" | "raised.wordSpacing" | "sign.gloss" | "sign.height" | "sign.illuminance" | "sign.width" | "symbol.centreHeight" | "symbol.circleDiameter" | "symbol.doorCentreOffset" | "symbol.frameHeight" | "symbol.thickness" | "symbol.triangleEdge" | "visual.characterHeight" | "visual.characterSpacing" | "visual.heightAboveFloor" | "visual.lineSpacing" | "visual.proportion" | "visual.strokeThickness";
            values: number[];
            /**
             * @description Absent: the `units` of the description for a length, else the one unit of the quantity.
             * @enum {string}
             */
            unit?: "mm" | "in" | "ratio" | "count" | "lx" | "gloss-units";
            /** @description With coverage factor 2, in the unit of the values. */
            expandedUncertainty?: number;
            instrument?: string;
        };
        /** @description Values read with an instrument; they win over declared ones. */
        MeasuredDescriptionInput: {
            /** @enum {string} */
            quantity: "border.width" | "braille.borderClearance" | "braille.bottomOffset" | "braille.cellSpacing" | "braille.characterClearance" | "braille.domeRadius" | "braille.dotBaseDiameter" | "braille.dotHeight" | "braille.dotSpacing" | "braille.leftOffset" | "braille.lineSpacing" | "braille.textGap" | "braille.variation" | "braille.wordGap" | "contrast.characters" | "contrast.charactersByBackground" | "contrast.charactersByBowmanSapolinski" | "contrast.charactersByDifference" | "contrast.charactersByMichelson" | "contrast.lighterReflectance" | "contrast.pictogram" | "contrast.pictogramByBackground" | "contrast.pictogramByBowmanSapolinski" | "contrast.pictogramByDifference" | "contrast.pictogramByLighter" | "contrast.pictogramByMichelson" | "contrast.reflectance" | "contrast.symbol" | "contrast.wallByBackground" | "contrast.wallByBowmanSapolinski" | "contrast.wallByDifference" | "contrast.wallByLighter" | "contrast.wallByMichelson" | "installation.aboveHandle" | "installation.architraveDistance" | "installation.brailleBaselineHighest" | "installation.brailleBaselineLowest" | "installation.brailleHighest" | "installation.centreHeight" | "installation.clearWall" | "installation.floorSpace" | "installation.headroom" | "installation.highestBaseline" | "installation.highestTactile" | "installation.jambDistance" | "installation.lowestBaseline" | "installation.lowestTactile" | "installation.overhang" | "installation.raisedLowestBaseline" | "installation.reach" | "installation.tactileLine" | "installation.topHeight" | "pictogram.count" | "pictogram.fieldHeight" | "pictogram.fieldWidth" | "pictogram.figureHeight" | "raised.borderClearance" | "raised.characterHeight" | "raised.characterSpacing" | "raised.characterSpacingAtBase" | "raised.characterSpacingInStrokes" | "raised.lineSpacing" | "raised.proportion" | "raised.relief" | "raised.strokeAtBase" | "raised.strokeThickness" | "raised.strokeWidth" | "raised.wordSpacing" | "sign.gloss" | "sign.height" | "sign.illuminance" | "sign.width" | "symbol.centreHeight" | "symbol.circleDiameter" | "symbol.doorCentreOffset" | "symbol.frameHeight" | "symbol.thickness" | "symbol.triangleEdge" | "visual.characterHeight" | "visual.characterSpacing" | "visual.heightAboveFloor" | "visual.lineSpacing" | "visual.proportion" | "visual.strokeThickness";
            values: number[];
            /**
             * @description Absent: the `units` of the description for a length, else the one unit of the quantity.
             * @enum {string}
             */
            unit?: "mm" | "in" | "ratio" | "count" | "lx" | "gloss-units";
            /** @description With coverage factor 2, in the unit of the values. */
            expandedUncertainty?: number;
            instrument?: string;
        };
        /** @description Readings, each of one quantity. A length without a unit is in millimetres. */
        MeasurementsRequest: components["schemas"]["MeasuredDescriptionInput"][] | {
            measured: components["schemas"]["MeasuredDescriptionInput"][];
            /** @description Who says so; absent: the name of the API key. */
            author?: string;
        };
        /** @description Another door whose leaf may turn over the floor at the sign. */
        NeighbouringDoorDescription: {
            /** @description Along the wall, from the middle of the tactile characters to the nearest edge of the closed leaf; with `corner`, from the corner. */
            distance: components["schemas"]["Distance"];
            leafWidth: components["schemas"]["Length"];
            /** @enum {string} */
            swing: "toward-reader" | "away" | "sliding" | "none";
            /**
             * @description Which edge of the closed leaf turns: the one nearer to the sign or the farther.
             * @enum {string}
             */
            hinge: "near" | "far";
            /** @description For a door in the adjacent wall: along the sign’s wall, from the middle of the tactile characters to the inner corner. */
            corner?: components["schemas"]["Distance"];
        };
        /** @description Another door whose leaf may turn over the floor at the sign. */
        NeighbouringDoorDescriptionInput: {
            /** @description Along the wall, from the middle of the tactile characters to the nearest edge of the closed leaf; with `corner`, from the corner. */
            distance: components["schemas"]["DistanceInput"];
            leafWidth: components["schemas"]["LengthInput"];
            /** @enum {string} */
            swing: "toward-reader" | "away" | "sliding" | "none";
            /**
             * @description Which edge of the closed leaf turns: the one nearer to the sign or the farther.
             * @enum {string}
             */
            hinge: "near" | "far";
            /** @description For a door in the adjacent wall: along the sign’s wall, from the middle of the tactile characters to the inner corner. */
            corner?: components["schemas"]["DistanceInput"];
        };
        /** @description An API key that was just made. */
        NewKey: {
            id: string;
            label: string;
            /** @description `check`: ask for checks, readings, drawings and the other answers that keep nothing; `read`: read submittals and their evidence; `write`: create, change and delete submittals; `admin`: make, list and revoke the keys of the organisation, with any scope */
            scopes: ("check" | "read" | "write" | "admin")[];
            /** @description Requests a minute; null: as the service is set. */
            rate: number | null;
            /** @description ISO 8601, UTC. */
            createdAt: string;
            expiresAt: string | null;
            revokedAt: string | null;
            /** @description To the minute. */
            lastUsedAt: string | null;
            /** @description The key itself. It is not kept and never shown again. */
            key: string;
        };
        /** @description An address with its new secret. */
        NewWebhook: {
            id: string;
            url: string;
            /** @description null: of everything. */
            events: ("submittal.checked" | "submittal.cancelled")[] | null;
            /** @description ISO 8601, UTC. */
            createdAt: string;
            /** @description Since when it has taken nothing. */
            failingSince: string | null;
            /** @description Since when nothing is sent to it any more. */
            disabledAt: string | null;
            disabledWhy: string | null;
            /** @description What its messages are signed with, from `whsec_` on. It is not shown again. */
            secret: string;
        };
        /** @description A requirement that still fails. */
        NotCorrected: {
            requirement: string;
            /** @description What keeps it from being put right without a decision about the design. */
            why: string;
        };
        /** @description A remark on a sign. */
        Note: {
            id: string;
            text: string;
            author: string;
            /** @description ISO 8601, UTC. */
            at: string;
        };
        /** @description A remark on a sign. */
        NoteRequest: {
            text: string;
            /** @description Who says so; absent: the name of the API key. */
            author?: string;
        };
        /** @description A raised frame round the sign. */
        OrderedBorder: {
            /** @description Thickness of the frame. */
            width: components["schemas"]["LengthInput"];
            /** @description From the edge of the panel to the frame; absent: the margin of the edge. */
            inset?: components["schemas"]["DistanceInput"];
        };
        /** @description What the sign says. */
        OrderedLettering: {
            text?: string;
            /** @description The text with its lines settled. */
            lines?: string[];
            /** @description A typeface that ships with the service; absent: Open Sans. */
            typeface?: {
                family: string;
            };
            /** @description Height of the capital I. */
            characterHeight?: components["schemas"]["LengthInput"];
            /** @enum {string} */
            alignment?: "flush-left" | "centred" | "flush-right";
            colour?: components["schemas"]["ColourDescriptionInput"];
        };
        /** @description The plate. Without a size the smallest stock blank that fits is taken. */
        OrderedPanel: {
            width?: components["schemas"]["LengthInput"];
            height?: components["schemas"]["LengthInput"];
            /** @enum {string} */
            finish?: "non-glare" | "matte" | "eggshell" | "satin" | "glossy";
            colour?: components["schemas"]["ColourDescriptionInput"];
        };
        /** @description A field above the text that is kept clear for a picture, which is not drawn. */
        OrderedPictogram: {
            /** @description What the picture will say. */
            meaning: string;
            /** @description Absent: the least that the standards allow. */
            fieldHeight?: components["schemas"]["LengthInput"];
            colour?: components["schemas"]["ColourDescriptionInput"];
            fieldColour?: components["schemas"]["ColourDescriptionInput"];
        };
        /** @description The plate that the sign is made of. */
        PanelDescription: {
            width?: components["schemas"]["Length"];
            height?: components["schemas"]["Length"];
            /** @enum {string} */
            finish?: "non-glare" | "matte" | "eggshell" | "satin" | "glossy";
            colour?: components["schemas"]["ColourDescription"];
            /**
             * @description The edge all round the panel, as a finger meets it.
             * @enum {string}
             */
            edge?: "rounded" | "chamfered" | "square";
        };
        /** @description The plate that the sign is made of. */
        PanelDescriptionInput: {
            width?: components["schemas"]["LengthInput"];
            height?: components["schemas"]["LengthInput"];
            /** @enum {string} */
            finish?: "non-glare" | "matte" | "eggshell" | "satin" | "glossy";
            colour?: components["schemas"]["ColourDescriptionInput"];
            /**
             * @description The edge all round the panel, as a finger meets it.
             * @enum {string}
             */
            edge?: "rounded" | "chamfered" | "square";
        };
        /** @description A picture that stands for a word. */
        PictogramDescription: {
            meaning?: string;
            /**
             * @description Of a symbol that is told by its outline, such as the door symbols of California.
             * @enum {string}
             */
            shape?: "triangle" | "circle" | "triangle-in-circle" | "other";
            /** @description The whole area set apart for the pictogram. */
            field?: components["schemas"]["BoxDescription"];
            colour?: components["schemas"]["ColourDescription"];
            fieldColour?: components["schemas"]["ColourDescription"];
            /**
             * @description Absent: the panel’s.
             * @enum {string}
             */
            finish?: "non-glare" | "matte" | "eggshell" | "satin" | "glossy";
            /** @description Height of the figure in the field. */
            figureHeight?: components["schemas"]["Length"];
            /** @description Edge of the triangle of a symbol that is told by its outline. */
            triangleEdge?: components["schemas"]["Length"];
            /** @description Diameter of its circle. */
            circleDiameter?: components["schemas"]["Length"];
            /** @description How thick such a symbol is. */
            thickness?: components["schemas"]["Length"];
            /** @description Finish floor to the centre of such a symbol. */
            centreHeight?: components["schemas"]["Length"];
            /** @description From its centre to the upright centreline of the door. */
            doorCentreOffset?: components["schemas"]["Distance"];
        };
        /** @description A picture that stands for a word. */
        PictogramDescriptionInput: {
            meaning?: string;
            /**
             * @description Of a symbol that is told by its outline, such as the door symbols of California.
             * @enum {string}
             */
            shape?: "triangle" | "circle" | "triangle-in-circle" | "other";
            /** @description The whole area set apart for the pictogram. */
            field?: components["schemas"]["BoxDescriptionInput"];
            colour?: components["schemas"]["ColourDescriptionInput"];
            fieldColour?: components["schemas"]["ColourDescriptionInput"];
            /**
             * @description Absent: the panel’s.
             * @enum {string}
             */
            finish?: "non-glare" | "matte" | "eggshell" | "satin" | "glossy";
            /** @description Height of the figure in the field. */
            figureHeight?: components["schemas"]["LengthInput"];
            /** @description Edge of the triangle of a symbol that is told by its outline. */
            triangleEdge?: components["schemas"]["LengthInput"];
            /** @description Diameter of its circle. */
            circleDiameter?: components["schemas"]["LengthInput"];
            /** @description How thick such a symbol is. */
            thickness?: components["schemas"]["LengthInput"];
            /** @description Finish floor to the centre of such a symbol. */
            centreHeight?: components["schemas"]["LengthInput"];
            /** @description From its centre to the upright centreline of the door. */
            doorCentreOffset?: components["schemas"]["DistanceInput"];
        };
        /** @description A part of the sign and where it comes from. */
        Place: {
            /** @description Our name of the part, e.g. `braille/0/line/0`. */
            element: string;
            /** @description Where it is on the sign; null when that is not known. */
            box: components["schemas"]["Box"] | null;
            /** @description Where it stands in the drawing; null when it was not drawn. */
            source: components["schemas"]["Source"] | null;
            /** @description JSON Pointer into the request; null when it was not described. */
            pointer: string | null;
        };
        /** @description A place on the sign, from the panel’s top left corner. */
        PointDescription: {
            x: components["schemas"]["Coordinate"];
            y: components["schemas"]["Coordinate"];
        };
        /** @description A place on the sign, from the panel’s top left corner. */
        PointDescriptionInput: {
            x: components["schemas"]["CoordinateInput"];
            y: components["schemas"]["CoordinateInput"];
        };
        /** @description What went wrong (RFC 9457). */
        Problem: {
            /** @description The address of the page that explains this problem. */
            type: string;
            title: string;
            status: number;
            detail: string;
            /** @description Names this one occurrence; the logs have it too. */
            instance: string;
            errors?: {
                detail: string;
                /** @description JSON Pointer into the body. */
                pointer?: string;
                /** @description Name of the query parameter or of the part of the form. */
                parameter?: string;
                line?: number;
                column?: number;
            }[];
            limit?: number;
            actual?: number;
            /** @description Of `cannot-satisfy`: what keeps the wish from being fulfilled. */
            conflicts?: {
                /** @description What cannot be had; `panel.size` where the room is too small. */
                quantity: string;
                requirements: string[];
                /** @description The same for people. */
                text: string;
            }[];
        };
        /** @description One raise of the revision. */
        PublishedChange: {
            revision: number;
            /** Format: date */
            date: string;
            text: string;
            /** @default [] */
            requirements: string[];
        };
        /** @description What the table leaves out, and why. */
        PublishedGap: {
            clause: string;
            about: string;
            /** @enum {string} */
            kind: "not-read" | "recalled-only" | "conflict" | "of-a-site" | "no-place-in-a-description" | "reading";
            why: string;
        };
        /** @description What a value must satisfy. A ratio is a share: 0.15, not 15. */
        PublishedLimit: {
            kind: string;
            min?: number;
            max?: number;
            /** @enum {string} */
            unit: "mm" | "ratio" | "count" | "lx" | "gloss-units" | "kind" | "truth";
            /** @description Kinds that pass. */
            pass?: string[];
            /** @description Kinds that a person has to judge. */
            judgement?: string[];
            /** @description As the standard prints it. */
            printed: string;
        };
        /** @description One requirement. */
        PublishedRow: {
            requirement: string;
            clause: string;
            title: string;
            text: string;
            /** @enum {string} */
            force: "shall" | "should" | "advice";
            /** @enum {string} */
            stage: "drawing" | "product" | "site";
            quantity: string;
            howToMeasure: string;
            limit: components["schemas"]["PublishedLimit"];
            exceptions: {
                when: string;
                clause: string;
                text: string;
                exempt: boolean;
                limit?: components["schemas"]["PublishedLimit"];
            }[];
            /** @description Uses of a sign that the row is in force for. */
            uses: string[];
            /** @description Only lettering of these parts is looked at. */
            parts?: ("raised" | "visual" | "both")[];
            /** @description Only characters with these sections are looked at. */
            sections?: ("straight" | "bevelled" | "rounded" | "other")[];
            /** @description Conditions that a sign must meet for the row to be in force. */
            when: string[];
            /** @description The clause that puts the row in force. */
            scopedBy: string;
            citation: {
                document: string;
                where: string;
                confidence: string;
                note?: string;
            };
        };
        /** @description A fact that the client could add. */
        Question: {
            /** @description Where in the request the answer belongs, a JSON Pointer. */
            pointer: string;
            ask: string;
            /** @description The unit of the answer, when it is a number: `units` of the description, so that a bare number there is right. */
            unit: ("mm" | "in" | "ratio" | "count" | "lx" | "gloss-units") | null;
            /** @description The possible answers, when there are only some. */
            choices: string[] | null;
            /** @description The requirements that the answer helps to decide. */
            decides: string[];
        };
        /** @description What a finger or an eye would read off the sign. */
        Reading: {
            panel: {
                /** @description Width, mm; null when it is not known. */
                width: number | null;
                /** @description Height, mm; null when it is not known. */
                height: number | null;
            };
            /** @description The lettering, one entry a line. */
            lettering: {
                /** @description The characters of one line; null when they could not be read. */
                text: string | null;
                /**
                 * @description Read by touch, by sight, or both.
                 * @enum {string}
                 */
                part: "raised" | "visual" | "both";
                /** @description Height of the characters, mm; null when it is not known. */
                characterHeight: number | null;
                box: components["schemas"]["Box"] | null;
            }[];
            /** @description The braille, one entry a block. */
            braille: {
                lines: {
                    /** @description Unicode braille, U+2800 for a blank cell; null when unread. */
                    cells: string | null;
                    /** @description What the cells say in print, shown only when it translates to exactly these cells. */
                    text: string | null;
                    box: components["schemas"]["Box"] | null;
                }[];
                /** @description How many raised dots the block has. */
                dots: number;
                /** @description Diameter of the dots at their base, mm; null when it is not known. */
                dotBaseDiameter: number | null;
                /** @description Distance of neighbouring dots in a cell, centre to centre, mm; null when it is not known. */
                dotSpacing: number | null;
                /** @description Distance of the same dot in neighbouring cells, mm; null when it is not known. */
                cellSpacing: number | null;
                /** @description Distance of the same dot in neighbouring lines, mm; null when it is not known. */
                lineSpacing: number | null;
                /** @description Degrees clockwise from the x axis to the reading direction, of a mirrored block after the mirror is taken away. */
                rotation: number;
                /** @description Drawn for reading from the other side. */
                mirrored: boolean;
            }[];
            pictograms: {
                meaning: string | null;
                field: components["schemas"]["Box"] | null;
            }[];
            borders: {
                box: components["schemas"]["Box"];
                raised: boolean | null;
            }[];
        };
        /** @description The reading of a sign, with what was assumed and what was passed over. */
        ReadingAnswer: {
            reading: components["schemas"]["Reading"];
            assumptions: components["schemas"]["Assumption"][];
            ignored: components["schemas"]["Ignored"][];
            unread: components["schemas"]["Unread"][];
        };
        /**
         * @description Why a finding is undetermined.
         * @enum {string}
         */
        Reason: "missing-fact" | "within-uncertainty" | "needs-judgement" | "unreadable" | "limit-reached";
        /** @description The change of one quantity that would turn the failure into a pass. */
        Remedy: {
            /** @description The quantity to change. */
            quantity: string;
            /** @description Least value that passes in every printed unit, in `unit`. */
            min: number | null;
            /** @description Greatest value that passes in every printed unit, in `unit`. */
            max: number | null;
            /** @description What to set it to, in `unit`; null when it is not a number or no number keeps every row. */
            aim: number | null;
            unit: components["schemas"]["Unit"];
            /** @description The kind, words or cells to use instead; null for numbers. */
            expected: string | null;
            /** @description The same for people. */
            text: string;
            /** @description What the standards asked allow together on this quantity, in `unit`; null when one was asked, or where they leave no number. */
            common: {
                min: number | null;
                max: number | null;
                /** @description Those of the standards asked that limit the quantity. */
                standards: string[];
            } | null;
        };
        /** @description One sign held against one or more standards. */
        Report: {
            /** @description Digest of the question: the same question has the same id and the same report. */
            id: string;
            /** @description The mark of the sign in its schedule, when it was given. */
            mark: string | null;
            /** @enum {string} */
            use: "permanent-room" | "exit-door" | "elevator-landing" | "elevator-car-control" | "directional" | "informational" | "parking" | "transit-station" | "symbol-of-accessibility" | "temporary" | "occupant-name" | "directory" | "gift";
            /** @description Over all findings of force `shall`. */
            verdict: components["schemas"]["Verdict"];
            /** @description The same, for each stage alone. */
            stages: {
                drawing: components["schemas"]["Verdict"];
                product: components["schemas"]["Verdict"];
                site: components["schemas"]["Verdict"];
            };
            /** @description How many findings of each verdict, whatever their force. */
            summary: {
                pass: number;
                fail: number;
                undetermined: number;
                notApplicable: number;
            };
            /** @description In the order in which they were asked, each with its own verdict. */
            standards: components["schemas"]["ReportStandard"][];
            /**
             * @description `guarded` leaves a value undetermined that lies within its uncertainty of a limit.
             * @enum {string}
             */
            decisionRule: "simple" | "guarded";
            /**
             * @description `both`: the printed inches and millimetres must both pass.
             * @enum {string}
             */
            unitSystem: "printed" | "both";
            /** @description In the order of the standards and of their tables. */
            findings: components["schemas"]["Finding"][];
            reading: components["schemas"]["Reading"];
            assumptions: components["schemas"]["Assumption"][];
            ignored: components["schemas"]["Ignored"][];
            unread: components["schemas"]["Unread"][];
            questions: components["schemas"]["Question"][];
            toMeasure: components["schemas"]["ToMeasure"][];
            caveats: string[];
            engine: components["schemas"]["Engine"];
        };
        /** @description A report that was made of a sign at one of its revisions. */
        ReportEntry: {
            revision: number;
            id: string;
            verdict: components["schemas"]["Verdict"];
            standards: {
                id: string;
                revision: number;
                digest: string;
            }[];
            /** @description ISO 8601, UTC. */
            madeAt: string;
            /** @description Path of the resource. */
            address: string;
        };
        /** @description A standard that the sign was held against. */
        ReportStandard: {
            id: string;
            /** @description Ours; raised by one whenever a row changes. */
            revision: number;
            title: string;
            edition: string;
            /**
             * @description `reference-geometry`: sizes with a name, which no code asks of a sign; all its rows are advice.
             * @enum {string}
             */
            kind: "code" | "standard" | "guidance" | "reference-geometry";
            /** @description The edition that took its place; null when none did. */
            supersededBy: string | null;
            /** @description Digest of the whole table. */
            digest: string;
            /** @description Over its findings of force `shall`. */
            verdict: components["schemas"]["Verdict"];
            /** @description How many findings of each verdict, whatever their force. */
            summary: {
                pass: number;
                fail: number;
                undetermined: number;
                notApplicable: number;
            };
            /** @description Where the rows of the table were read. */
            sources: {
                /** @description The document, as citations name it. */
                document: string;
                /** @description Where it is published. */
                where: string;
            }[];
        };
        /** @description What several readings say of all values, read or not. */
        Sample: {
            /** @description How many readings. */
            count: number;
            /** @description In `unit`. */
            mean: number;
            /** @description Of a single reading, in `unit`. */
            standardDeviation: number;
            /** @description Null where nothing but equal readings was given. */
            interval: components["schemas"]["ToleranceInterval"] | null;
            /** @description Null where it cannot be said to be more than a half. */
            shareWithin: components["schemas"]["ShareWithin"] | null;
            /** @description Null where nothing but equal readings was given. */
            capability: components["schemas"]["Capability"] | null;
            /** @description How many more readings with the same mean and spread would put `interval` within the limits; 0 when it lies there. Null when no reasonable number would, or a single value has failed already. */
            moreReadings: number | null;
            /** @description What all but the first three rest on, for people. */
            assumption: string;
        };
        /** @description Something that is wrong with the set as a whole; it changes no verdict. */
        SetFinding: {
            /** @enum {string} */
            kind: "same-mark" | "wording-differs" | "typefaces-differ" | "braille-spacing-differs" | "door-without-sign";
            /** @description Marks of the signs that it is about. */
            marks: string[];
            message: string;
        };
        /** @description The least share of all values, read or not, that keeps the limits. */
        ShareWithin: {
            atLeast: number;
            confidence: number;
        };
        /** @description What a change comes to: the sign is queued to be checked again. */
        SignChange: {
            sign: string;
            /** @description The revision that waits for its report. */
            revision: number;
            /** @enum {string} */
            state: "queued" | "done" | "cancelled";
        };
        /**
         * @description A sign in the trade’s terms. What is missing becomes `undetermined`, never an error.
         * @example {
         *       "units": "mm",
         *       "mark": "P-117",
         *       "use": "permanent-room",
         *       "panel": {
         *         "width": 230,
         *         "height": 120,
         *         "finish": "matte",
         *         "colour": "#f4f1e6"
         *       },
         *       "lettering": [
         *         {
         *           "part": "both",
         *           "text": "POTTERY 117",
         *           "typeface": {
         *             "family": "Open Sans",
         *             "style": "sans-serif"
         *           },
         *           "characterProportion": 0.9,
         *           "characterHeight": 19,
         *           "strokeThickness": 2.6,
         *           "relief": 0.9,
         *           "section": "straight",
         *           "characterSpacing": 3.5,
         *           "colour": "#16324f",
         *           "baseline": {
         *             "x": 20,
         *             "y": 45
         *           }
         *         }
         *       ],
         *       "braille": [
         *         {
         *           "text": "pottery 117",
         *           "code": "ueb-contracted",
         *           "dotBaseDiameter": 1.55,
         *           "dotHeight": 0.75,
         *           "dotShape": "domed",
         *           "dotSpacing": 2.4,
         *           "cellSpacing": 6.9,
         *           "origin": {
         *             "x": 20,
         *             "y": 70
         *           }
         *         }
         *       ],
         *       "pictograms": [],
         *       "borders": [],
         *       "properNames": [],
         *       "installation": {
         *         "panelBottomHeight": 1350,
         *         "side": "latch",
         *         "approach": "interior",
         *         "door": {
         *           "leafWidth": 915,
         *           "swing": "toward-reader",
         *           "latchToTextCentre": 280
         *         }
         *       }
         *     }
         */
        SignDescription: {
            /**
             * @description What every bare length means; absent: millimetres.
             * @enum {string}
             */
            units?: "mm" | "in";
            /** @description The sign’s name in the sign schedule. */
            mark?: string;
            /** @enum {string} */
            use: "permanent-room" | "exit-door" | "elevator-landing" | "elevator-car-control" | "directional" | "informational" | "parking" | "transit-station" | "symbol-of-accessibility" | "temporary" | "occupant-name" | "directory" | "gift";
            panel?: components["schemas"]["PanelDescription"];
            lettering?: components["schemas"]["LetteringDescription"][];
            braille?: components["schemas"]["BrailleDescription"][];
            /** @description Absent: none, as an assumption. */
            pictograms?: components["schemas"]["PictogramDescription"][];
            /** @description Absent: none, as an assumption. */
            borders?: components["schemas"]["BorderDescription"][];
            /** @description Words that may keep their capital sign in braille; given, even empty, the capitals rule can be decided. */
            properNames?: string[];
            installation?: components["schemas"]["InstallationDescription"];
            measured?: components["schemas"]["MeasuredDescription"][];
        };
        /**
         * @description A sign in the trade’s terms. What is missing becomes `undetermined`, never an error.
         * @example {
         *       "units": "mm",
         *       "mark": "P-117",
         *       "use": "permanent-room",
         *       "panel": {
         *         "width": 230,
         *         "height": 120,
         *         "finish": "matte",
         *         "colour": "#f4f1e6"
         *       },
         *       "lettering": [
         *         {
         *           "part": "both",
         *           "text": "POTTERY 117",
         *           "typeface": {
         *             "family": "Open Sans",
         *             "style": "sans-serif"
         *           },
         *           "characterProportion": 0.9,
         *           "characterHeight": 19,
         *           "strokeThickness": 2.6,
         *           "relief": 0.9,
         *           "section": "straight",
         *           "characterSpacing": 3.5,
         *           "colour": "#16324f",
         *           "baseline": {
         *             "x": 20,
         *             "y": 45
         *           }
         *         }
         *       ],
         *       "braille": [
         *         {
         *           "text": "pottery 117",
         *           "code": "ueb-contracted",
         *           "dotBaseDiameter": 1.55,
         *           "dotHeight": 0.75,
         *           "dotShape": "domed",
         *           "dotSpacing": 2.4,
         *           "cellSpacing": 6.9,
         *           "origin": {
         *             "x": 20,
         *             "y": 70
         *           }
         *         }
         *       ],
         *       "pictograms": [],
         *       "borders": [],
         *       "properNames": [],
         *       "installation": {
         *         "panelBottomHeight": 1350,
         *         "side": "latch",
         *         "approach": "interior",
         *         "door": {
         *           "leafWidth": 915,
         *           "swing": "toward-reader",
         *           "latchToTextCentre": 280
         *         }
         *       }
         *     }
         */
        SignDescriptionInput: {
            /**
             * @description What every bare length means; absent: millimetres.
             * @enum {string}
             */
            units?: "mm" | "in";
            /** @description The sign’s name in the sign schedule. */
            mark?: string;
            /** @enum {string} */
            use: "permanent-room" | "exit-door" | "elevator-landing" | "elevator-car-control" | "directional" | "informational" | "parking" | "transit-station" | "symbol-of-accessibility" | "temporary" | "occupant-name" | "directory" | "gift";
            panel?: components["schemas"]["PanelDescriptionInput"];
            lettering?: components["schemas"]["LetteringDescriptionInput"][];
            braille?: components["schemas"]["BrailleDescriptionInput"][];
            /** @description Absent: none, as an assumption. */
            pictograms?: components["schemas"]["PictogramDescriptionInput"][];
            /** @description Absent: none, as an assumption. */
            borders?: components["schemas"]["BorderDescriptionInput"][];
            /** @description Words that may keep their capital sign in braille; given, even empty, the capitals rule can be decided. */
            properNames?: string[];
            installation?: components["schemas"]["InstallationDescriptionInput"];
            measured?: components["schemas"]["MeasuredDescriptionInput"][];
        };
        /**
         * @description A sign without its geometry.
         * @example {
         *       "use": "permanent-room",
         *       "lettering": [
         *         {
         *           "text": "Seed Library"
         *         }
         *       ]
         *     }
         */
        SignOrder: {
            /**
             * @description What every bare length means; absent: millimetres.
             * @enum {string}
             */
            units?: "mm" | "in";
            mark?: string;
            /** @enum {string} */
            use: "permanent-room" | "exit-door" | "elevator-landing" | "elevator-car-control" | "directional" | "informational" | "parking" | "transit-station" | "symbol-of-accessibility" | "temporary" | "occupant-name" | "directory" | "gift";
            panel?: components["schemas"]["OrderedPanel"];
            /** @description One text; it may have several lines. */
            lettering: components["schemas"]["OrderedLettering"][];
            /**
             * @description What the braille is made on, where a code tells its sizes by that.
             * @enum {string}
             */
            carrier?: "paper" | "sticker" | "pvc" | "stainless-steel" | "other";
            border?: components["schemas"]["OrderedBorder"];
            pictogram?: components["schemas"]["OrderedPictogram"];
            properNames?: string[];
            installation?: components["schemas"]["InstallationDescriptionInput"];
        };
        /** @description Where an element stands in the uploaded drawing. */
        Source: {
            /** @description The id of the element in the drawing, when it has one. */
            id: string | null;
            /** @description Line of the drawing, counted from 1. */
            line: number;
            /** @description Column of that line, counted from 1. */
            column: number;
        };
        /**
         * @description Where the evidence comes from: the drawing, the finished product or the site.
         * @enum {string}
         */
        Stage: "drawing" | "product" | "site";
        /** @description How the table of one standard changed. */
        StandardChanges: {
            id: string;
            /** @description Newest last. */
            changes: components["schemas"]["PublishedChange"][];
        };
        /** @description The standards that a sign can be held against. */
        StandardList: {
            standards: {
                id: string;
                title: string;
                edition: string;
                jurisdiction: string;
                /**
                 * @description `reference-geometry`: sizes with a name, which no code asks of a sign; they are advice.
                 * @enum {string}
                 */
                kind: "code" | "standard" | "guidance" | "reference-geometry";
                /** @description The id of the edition that took its place; null when none did. */
                supersededBy: string | null;
                /** @description Ours; raised by one whenever a row changes. */
                revision: number;
                /** @description Digest of the whole table. */
                digest: string;
            }[];
        };
        /** @description One edition of a standard, row by row. */
        StandardTable: {
            id: string;
            title: string;
            edition: string;
            jurisdiction: string;
            /**
             * @description `reference-geometry`: sizes with a name, which no code asks of a sign; they are advice.
             * @enum {string}
             */
            kind: "code" | "standard" | "guidance" | "reference-geometry";
            /** @description The id of the edition that took its place; null when none did. */
            supersededBy: string | null;
            /** @description Ours; raised by one whenever a row changes. */
            revision: number;
            /** @description Digest of the whole table. */
            digest: string;
            gaps: components["schemas"]["PublishedGap"][];
            requirements: components["schemas"]["PublishedRow"][];
        };
        /** @description A set of signs that is kept. */
        Submittal: {
            id: string;
            name: string;
            /**
             * @description `running` again while signs that changed wait for a new report.
             * @enum {string}
             */
            state: "queued" | "running" | "done" | "cancelled";
            signs: {
                total: number;
                done: number;
            };
            /** @description How many signs have which verdict; `none`: no report yet, or none possible. */
            verdicts: {
                pass: number;
                fail: number;
                undetermined: number;
                notApplicable: number;
                none: number;
            };
            /** @description Pinned to the revisions of the day on which it was made. */
            standards: string[];
            options: components["schemas"]["CheckOptions"];
            problems: components["schemas"]["IntakeProblem"][];
            /** @description Made anew whenever the last sign has its report. */
            setFindings: components["schemas"]["SetFinding"][];
            history: {
                events: number;
                /** @description Hash of the last event. */
                head: string;
            };
            /** @description ISO 8601, UTC. */
            createdAt: string;
            /** @description ISO 8601, UTC. */
            updatedAt: string;
            links: {
                /** @description Path of the resource. */
                signs: string;
                /** @description Path of the resource. */
                events: string;
                /** @description Path of the resource. */
                history: string;
            };
        };
        /** @description A submittal was cancelled before every sign had been checked. */
        SubmittalCancelledMessage: {
            /** @constant */
            type: "submittal.cancelled";
            /** @description ISO 8601, UTC. */
            timestamp: string;
            data: {
                submittal: string;
                name: string;
                /** @enum {string} */
                state: "done" | "cancelled";
                signs: {
                    total: number;
                    done: number;
                };
                verdicts: {
                    pass: number;
                    fail: number;
                    undetermined: number;
                    notApplicable: number;
                    none: number;
                };
                /** @description Path of the submittal. */
                address: string;
            };
        };
        /** @description Every sign of a submittal has been checked; again whenever that is so after a change. */
        SubmittalCheckedMessage: {
            /** @constant */
            type: "submittal.checked";
            /** @description ISO 8601, UTC. */
            timestamp: string;
            data: {
                submittal: string;
                name: string;
                /** @enum {string} */
                state: "done" | "cancelled";
                signs: {
                    total: number;
                    done: number;
                };
                verdicts: {
                    pass: number;
                    fail: number;
                    undetermined: number;
                    notApplicable: number;
                    none: number;
                };
                /** @description Path of the submittal. */
                address: string;
            };
        };
        /** @description Submittals, the newest first. */
        SubmittalList: {
            submittals: components["schemas"]["Submittal"][];
            /** @description Cursor of the next page; null at the end. */
            next: string | null;
        };
        /**
         * @description A set of signs to be kept and checked.
         * @example {
         *       "name": "Pottery studio",
         *       "signs": [
         *         {
         *           "location": "117",
         *           "sign": {
         *             "units": "mm",
         *             "mark": "P-117",
         *             "use": "permanent-room",
         *             "panel": {
         *               "width": 230,
         *               "height": 120,
         *               "finish": "matte",
         *               "colour": "#f4f1e6"
         *             },
         *             "lettering": [
         *               {
         *                 "part": "both",
         *                 "text": "POTTERY 117",
         *                 "typeface": {
         *                   "family": "Open Sans",
         *                   "style": "sans-serif"
         *                 },
         *                 "characterProportion": 0.9,
         *                 "characterHeight": 19,
         *                 "strokeThickness": 2.6,
         *                 "relief": 0.9,
         *                 "section": "straight",
         *                 "characterSpacing": 3.5,
         *                 "colour": "#16324f",
         *                 "baseline": {
         *                   "x": 20,
         *                   "y": 45
         *                 }
         *               }
         *             ],
         *             "braille": [
         *               {
         *                 "text": "pottery 117",
         *                 "code": "ueb-contracted",
         *                 "dotBaseDiameter": 1.55,
         *                 "dotHeight": 0.75,
         *                 "dotShape": "domed",
         *                 "dotSpacing": 2.4,
         *                 "cellSpacing": 6.9,
         *                 "origin": {
         *                   "x": 20,
         *                   "y": 70
         *                 }
         *               }
         *             ],
         *             "pictograms": [],
         *             "borders": [],
         *             "properNames": [],
         *             "installation": {
         *               "panelBottomHeight": 1350,
         *               "side": "latch",
         *               "approach": "interior",
         *               "door": {
         *                 "leafWidth": 915,
         *                 "swing": "toward-reader",
         *                 "latchToTextCentre": 280
         *               }
         *             }
         *           }
         *         }
         *       ]
         *     }
         */
        SubmittalRequest: {
            /** @description What the set is called. */
            name?: string;
            /**
             * @description Ids of standards; `id@revision` pins one to a revision.
             * @example [
             *       "us-ada-2010"
             *     ]
             */
            standards?: string[];
            options?: components["schemas"]["CheckOptionsInput"];
            signs: components["schemas"]["SubmittalSign"][];
        };
        /** @description One sign of a submittal in a list. */
        SubmittalSignEntry: {
            id: string;
            mark: string;
            location: string | null;
            door: string | null;
            /** @description Names of the files that it came from. */
            files: string[];
            /** @enum {string} */
            state: "queued" | "done" | "cancelled";
            /** @description Raised whenever something that is judged was added. */
            revision: number;
            /** @description Of the latest report; null without one. */
            verdict: components["schemas"]["Verdict"] | null;
            /** @description Why no report could be made. */
            problem: {
                /** @description The address of the page that explains this problem. */
                type: string;
                title: string;
                status: number;
                detail: string;
                errors?: {
                    detail: string;
                    /** @description JSON Pointer into the body. */
                    pointer?: string;
                    /** @description Name of the query parameter or of the part of the form. */
                    parameter?: string;
                    line?: number;
                    column?: number;
                }[];
                limit?: number;
                actual?: number;
                /** @description Of `cannot-satisfy`: what keeps the wish from being fulfilled. */
                conflicts?: {
                    /** @description What cannot be had; `panel.size` where the room is too small. */
                    quantity: string;
                    requirements: string[];
                    /** @description The same for people. */
                    text: string;
                }[];
            } | null;
            /** @description ISO 8601, UTC. */
            updatedAt: string;
            /** @description The latest report, whole unless `report=brief` is asked for. */
            report: (components["schemas"]["Report"] | components["schemas"]["BriefReport"]) | null;
        };
        /** @description One sign of a set: a description, a drawing or both. */
        SubmittalSign: {
            /** @description What tells the sign from the others. Absent: that of the description. */
            mark?: string;
            /** @description Room number or place. */
            location?: string;
            /** @description The door that it stands beside. */
            door?: string;
            sign?: components["schemas"]["SignDescriptionInput"];
            /** @description An SVG document as text, or the name of a drawing that is uploaded beside this file. */
            drawing?: string;
            options?: components["schemas"]["CheckOptionsInput"];
        };
        /** @description Signs of a submittal in the order of the upload. */
        SubmittalSignList: {
            signs: components["schemas"]["SubmittalSignEntry"][];
            /** @description Cursor of the next page; null at the end. */
            next: string | null;
        };
        /** @description Something undetermined that a gauge or a tape would decide. */
        ToMeasure: {
            requirement: string;
            clause: string;
            title: string;
            stage: components["schemas"]["Stage"];
            /** @description The limit as printed. */
            limit: string;
            /** @description How to measure it. */
            how: string;
        };
        /** @description Where a share of all values lies, read or not. */
        ToleranceInterval: {
            /** @description In `unit`; null against limits that have no lower end. */
            min: number | null;
            /** @description In `unit`; null against limits that have no upper end. */
            max: number | null;
            /** @description The share of all values that lies within. */
            coverage: number;
            /** @description How surely it does. */
            confidence: number;
        };
        /** @description A text in braille, laid out. */
        Translation: {
            /**
             * @description The print text as translated, after the capitals rule.
             * @example reading room 204
             */
            text: string;
            /**
             * @description All cells, words parted by U+2800.
             * @example ⠗⠂⠙⠬⠀⠗⠕⠕⠍⠀⠼⠃⠚⠙
             */
            cells: string;
            /** @enum {string} */
            code: "ueb-contracted" | "ueb-uncontracted";
            /** @description The cells, broken at blanks to the width asked for. */
            lines: string[];
            /** @description The block from dot centre to dot centre, full cells. Add a dot base diameter for the space on the sign. */
            size: {
                width: number;
                height: number;
                /** @constant */
                unit: "mm";
            };
            spacing: {
                dotSpacing: number;
                cellSpacing: number;
                lineSpacing: number;
                /** @constant */
                unit: "mm";
            };
            /**
             * @description Centres of the raised dots, [x, y] in millimetres from dot 1 of the first cell, x to the right and y down.
             * @example [
             *       [
             *         0,
             *         0
             *       ],
             *       [
             *         2.4,
             *         0
             *       ]
             *     ]
             */
            dots: [
                number,
                number
            ][];
            /** @description Words that are wider than the width asked for; each stands on its own line. */
            tooWide: string[];
            /** @description What translated: name, version, table and a digest of the tables. */
            engine: {
                engine: string;
                version: string;
                table: string;
                digest: string;
            };
        };
        /** @description A text to put into braille, or braille to read back. */
        TranslationRequest: {
            /**
             * @description Print text to translate. Give either this or `cells`.
             * @example Reading Room 204
             */
            text?: string;
            /**
             * @description Braille to read back, as Unicode braille. Give either this or `text`.
             * @example ⠗⠕⠕⠍⠀⠼⠃⠚⠙
             */
            cells?: string;
            /**
             * @description Unified English Braille, contracted or uncontracted. Absent: the grade that the standards ask for, contracted where they leave it open.
             * @example ueb-contracted
             * @enum {string}
             */
            code?: "ueb-contracted" | "ueb-uncontracted";
            /**
             * @description Most that a line may be wide, in millimetres, from the first column of dots to the last. Absent: one line.
             * @example 120
             */
            width?: number;
            /**
             * @description Names and acronyms that keep their capital signs where a standard otherwise asks for small letters.
             * @example [
             *       "Orchid House"
             *     ]
             */
            properNames?: string[];
            /**
             * @description Standards whose grade, capitals rule and braille spacing apply; absent: us-ada-2010, as for checks. `properNames` keep their capitals.
             * @example [
             *       "us-ada-2010"
             *     ]
             */
            standards?: string[];
        };
        /**
         * @description Millimetres, a plain ratio (0.15, not 15), a count, lux, gloss units, one of several kinds, or a yes or no.
         * @enum {string}
         */
        Unit: "mm" | "ratio" | "count" | "lx" | "gloss-units" | "kind" | "truth";
        /** @description The printed inches and the printed millimetres judge differently. */
        UnitSplit: {
            /**
             * @description The unit that decided.
             * @enum {string}
             */
            judged: "in" | "mm";
            /**
             * @description The printed unit in which the value passes.
             * @enum {string}
             */
            pass: "in" | "mm";
            /**
             * @description The printed unit in which the value fails.
             * @enum {string}
             */
            fail: "in" | "mm";
        };
        /** @description Something that was seen and not understood. */
        Unread: {
            where: components["schemas"]["Place"];
            why: string;
            couldBe: ("braille" | "lettering" | "pictogram" | "border" | "colour")[];
        };
        /** @description A set of signs as files. */
        UploadForm: {
            /** @description Any number of files: SVG drawings, zips, schedules as CSV or XLSX, descriptions as JSON. */
            files: string[];
            /** @description What the set is called. */
            name?: string;
            /** @description Ids parted by commas, or a JSON array. */
            standards?: string;
            options?: components["schemas"]["CheckOptionsInput"];
        };
        /**
         * @description `undetermined` always has a reason; `not-applicable` when nothing is asked of this sign.
         * @enum {string}
         */
        Verdict: "pass" | "fail" | "undetermined" | "not-applicable";
        /** @description A finding that an authority lets stand. The finding and its verdict stay as they are. */
        Waiver: {
            id: string;
            fingerprint: string;
            /** @description Of the finding that it lets stand; null when there is none. */
            requirement: string | null;
            reason: string;
            author: string;
            authority: string;
            /** @description The last day on which it holds. */
            expires: string | null;
            /**
             * @description `unused`: no finding of the latest report fails or is undecided with this fingerprint.
             * @enum {string}
             */
            standing: "in-force" | "expired" | "unused";
            /** @description ISO 8601, UTC. */
            at: string;
        };
        /** @description A finding that an authority lets stand. */
        WaiverRequest: {
            /** @description Of the finding, as the report gives it. */
            fingerprint: string;
            reason: string;
            /** @description Who says so; absent: the name of the API key. */
            author?: string;
            /** @description The authority’s own number or letter. */
            authority: string;
            /** @description The last day on which it holds; absent: until withdrawn. */
            expires?: string | null;
        };
        /** @description An address that is told of what happens. */
        Webhook: {
            id: string;
            url: string;
            /** @description null: of everything. */
            events: ("submittal.checked" | "submittal.cancelled")[] | null;
            /** @description ISO 8601, UTC. */
            createdAt: string;
            /** @description Since when it has taken nothing. */
            failingSince: string | null;
            /** @description Since when nothing is sent to it any more. */
            disabledAt: string | null;
            disabledWhy: string | null;
        };
        /** @description A message to an address. */
        WebhookDelivery: {
            /** @description The webhook-id of the message. */
            id: string;
            /** @enum {string} */
            kind: "submittal.checked" | "submittal.cancelled" | "endpoint.test";
            /** @enum {string} */
            state: "waiting" | "delivered" | "given-up";
            attempts: number;
            /** @description What it was last answered with; null: nothing. */
            lastStatus: number | null;
            lastError: string | null;
            /** @description ISO 8601, UTC. */
            createdAt: string;
            /** @description ISO 8601, UTC. */
            updatedAt: string;
        };
        /** @description The addresses of the organisation, the oldest first. */
        WebhookList: {
            webhooks: components["schemas"]["Webhook"][];
        };
        /** @description An address that is to be told of what happens. */
        WebhookRequest: {
            /** @description Public, https. */
            url: string;
            /** @description What it is told of; absent: of everything, later kinds too. */
            events?: ("submittal.checked" | "submittal.cancelled")[];
        };
        /** @description An address with what was last sent to it. */
        WebhookWithDeliveries: {
            id: string;
            url: string;
            /** @description null: of everything. */
            events: ("submittal.checked" | "submittal.cancelled")[] | null;
            /** @description ISO 8601, UTC. */
            createdAt: string;
            /** @description Since when it has taken nothing. */
            failingSince: string | null;
            /** @description Since when nothing is sent to it any more. */
            disabledAt: string | null;
            disabledWhy: string | null;
            /** @description The last ones, the latest first. */
            deliveries: components["schemas"]["WebhookDelivery"][];
        };
    };
    responses: never;
    parameters: never;
    requestBodies: never;
    headers: never;
    pathItems: never;
}
export type $defs = Record<string, never>;
export interface operations {
    isAlive: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description All is well. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Health"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    isReady: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description All is well. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Health"];
                };
            };
            /** @description [The service is busy](/docs/problems/busy); [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getMetrics: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The measurements. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/plain": string;
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    createCheck: {
        parameters: {
            query?: {
                /** @description Ids parted by commas. Only beside a bare drawing, like all parameters. */
                standards?: string;
                /** @description What the sign is for; without it permanent-room is assumed, and the report says so. */
                use?: "permanent-room" | "exit-door" | "elevator-landing" | "elevator-car-control" | "directional" | "informational" | "parking" | "transit-station" | "symbol-of-accessibility" | "temporary" | "occupant-name" | "directory" | "gift";
                /** @description Millimetres per user unit. */
                scale?: number;
                /** @description Millimetres, of the dots that a drilling program makes. */
                dotBaseDiameter?: number;
                decisionRule?: "simple" | "guarded";
                unitSystem?: "printed" | "both";
                language?: "en";
                /** @description Names parted by commas; empty: there are none. */
                properNames?: string;
                /** @description Of several panels on one sheet, the one that is the sign: its number or its id. */
                panel?: string;
                /** @description A JSON object from layer, id or class to part. `part.<name>=<part>` does the same for one name. */
                part?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CheckRequest"];
                "image/svg+xml": string;
                "text/x-gcode": string;
                "multipart/form-data": components["schemas"]["CheckForm"];
            };
        };
        responses: {
            /** @description The report. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Report"];
                    "text/html": string;
                    "image/svg+xml": string;
                    "text/csv": string;
                    "application/sarif+json": string;
                    "application/pdf": unknown;
                };
            };
            /** @description [The JSON cannot be read](/docs/problems/malformed-json); [The request cannot be read](/docs/problems/malformed-request); [The drawing cannot be read](/docs/problems/malformed-drawing); [The drilling program cannot be read](/docs/problems/malformed-program); [The drawing declares entities that are not read](/docs/problems/entities-not-accepted) */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [No form of the answer suits the Accept header](/docs/problems/not-acceptable) */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The request is too large](/docs/problems/too-large) */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The media type of the body is not read](/docs/problems/unsupported-media-type) */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The description does not fit its schema](/docs/problems/invalid-description); [A query parameter cannot be used](/docs/problems/invalid-parameters); [A standard is not known](/docs/problems/unknown-standard); [The scale of the drawing is not known](/docs/problems/scale-unknown); [The drawing holds nothing that could be touched or read](/docs/problems/no-tactile-elements); [The drawing holds several signs](/docs/problems/several-signs); [The drawing is too complex](/docs/problems/too-complex) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The service is busy](/docs/problems/busy) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    createReading: {
        parameters: {
            query?: {
                /** @description Ids parted by commas. Only beside a bare drawing, like all parameters. */
                standards?: string;
                /** @description What the sign is for; without it permanent-room is assumed, and the report says so. */
                use?: "permanent-room" | "exit-door" | "elevator-landing" | "elevator-car-control" | "directional" | "informational" | "parking" | "transit-station" | "symbol-of-accessibility" | "temporary" | "occupant-name" | "directory" | "gift";
                /** @description Millimetres per user unit. */
                scale?: number;
                /** @description Millimetres, of the dots that a drilling program makes. */
                dotBaseDiameter?: number;
                decisionRule?: "simple" | "guarded";
                unitSystem?: "printed" | "both";
                language?: "en";
                /** @description Names parted by commas; empty: there are none. */
                properNames?: string;
                /** @description Of several panels on one sheet, the one that is the sign: its number or its id. */
                panel?: string;
                /** @description A JSON object from layer, id or class to part. `part.<name>=<part>` does the same for one name. */
                part?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CheckRequest"];
                "image/svg+xml": string;
                "text/x-gcode": string;
                "multipart/form-data": components["schemas"]["CheckForm"];
            };
        };
        responses: {
            /** @description The reading. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReadingAnswer"];
                };
            };
            /** @description [The JSON cannot be read](/docs/problems/malformed-json); [The request cannot be read](/docs/problems/malformed-request); [The drawing cannot be read](/docs/problems/malformed-drawing); [The drilling program cannot be read](/docs/problems/malformed-program); [The drawing declares entities that are not read](/docs/problems/entities-not-accepted) */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [No form of the answer suits the Accept header](/docs/problems/not-acceptable) */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The request is too large](/docs/problems/too-large) */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The media type of the body is not read](/docs/problems/unsupported-media-type) */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The description does not fit its schema](/docs/problems/invalid-description); [A query parameter cannot be used](/docs/problems/invalid-parameters); [A standard is not known](/docs/problems/unknown-standard); [The scale of the drawing is not known](/docs/problems/scale-unknown); [The drawing holds nothing that could be touched or read](/docs/problems/no-tactile-elements); [The drawing holds several signs](/docs/problems/several-signs); [The drawing is too complex](/docs/problems/too-complex) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The service is busy](/docs/problems/busy) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    createTranslation: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["TranslationRequest"];
            };
        };
        responses: {
            /** @description The translation. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Translation"];
                };
            };
            /** @description [The JSON cannot be read](/docs/problems/malformed-json) */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [No form of the answer suits the Accept header](/docs/problems/not-acceptable) */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The request is too large](/docs/problems/too-large) */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The media type of the body is not read](/docs/problems/unsupported-media-type) */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The description does not fit its schema](/docs/problems/invalid-description); [A standard is not known](/docs/problems/unknown-standard); [The text cannot be put into braille](/docs/problems/untranslatable-text) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The service is busy](/docs/problems/busy) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    createDrawing: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["DrawingRequest"];
            };
        };
        responses: {
            /** @description The drawing, what goes with it, and its report. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DrawingAnswer"];
                    "image/svg+xml": string;
                };
            };
            /** @description [The JSON cannot be read](/docs/problems/malformed-json) */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [No form of the answer suits the Accept header](/docs/problems/not-acceptable) */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The request is too large](/docs/problems/too-large) */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The media type of the body is not read](/docs/problems/unsupported-media-type) */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The description does not fit its schema](/docs/problems/invalid-description); [A standard is not known](/docs/problems/unknown-standard); [The text cannot be put into braille](/docs/problems/untranslatable-text); [No sign satisfies all that is asked](/docs/problems/cannot-satisfy); [The drawing is too complex](/docs/problems/too-complex) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The service is busy](/docs/problems/busy) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    createCorrection: {
        parameters: {
            query?: {
                /** @description Ids parted by commas. Only beside a bare drawing, like all parameters. */
                standards?: string;
                /** @description What the sign is for; without it permanent-room is assumed, and the report says so. */
                use?: "permanent-room" | "exit-door" | "elevator-landing" | "elevator-car-control" | "directional" | "informational" | "parking" | "transit-station" | "symbol-of-accessibility" | "temporary" | "occupant-name" | "directory" | "gift";
                /** @description Millimetres per user unit. */
                scale?: number;
                /** @description Millimetres, of the dots that a drilling program makes. */
                dotBaseDiameter?: number;
                decisionRule?: "simple" | "guarded";
                unitSystem?: "printed" | "both";
                language?: "en";
                /** @description Names parted by commas; empty: there are none. */
                properNames?: string;
                /** @description Of several panels on one sheet, the one that is the sign: its number or its id. */
                panel?: string;
                /** @description A JSON object from layer, id or class to part. `part.<name>=<part>` does the same for one name. */
                part?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "image/svg+xml": string;
                "text/x-gcode": string;
                "multipart/form-data": components["schemas"]["CheckForm"];
                "application/json": components["schemas"]["CheckRequest"];
            };
        };
        responses: {
            /** @description The drawing, what was changed, what was not and why, and the check of the result. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Correction"];
                };
            };
            /** @description [The JSON cannot be read](/docs/problems/malformed-json); [The request cannot be read](/docs/problems/malformed-request); [The drawing cannot be read](/docs/problems/malformed-drawing); [The drawing declares entities that are not read](/docs/problems/entities-not-accepted) */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [No form of the answer suits the Accept header](/docs/problems/not-acceptable) */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The request is too large](/docs/problems/too-large) */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The media type of the body is not read](/docs/problems/unsupported-media-type) */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The description does not fit its schema](/docs/problems/invalid-description); [A query parameter cannot be used](/docs/problems/invalid-parameters); [A standard is not known](/docs/problems/unknown-standard); [The scale of the drawing is not known](/docs/problems/scale-unknown); [The drawing holds nothing that could be touched or read](/docs/problems/no-tactile-elements); [The drawing holds several signs](/docs/problems/several-signs); [The drawing is too complex](/docs/problems/too-complex) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The service is busy](/docs/problems/busy) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    createDotPlan: {
        parameters: {
            query?: {
                /** @description Of the program: `dry-run` stays above the surface. */
                variant?: "real" | "dry-run";
                /** @description Of the program. */
                units?: "mm" | "in";
                /** @description Of the program: drilling cycles or plain moves. */
                moves?: "cycles" | "plain";
                /** @description Millimetres per user unit. Only beside a bare drawing. */
                scale?: number;
                /** @description Of several panels on one sheet, the one that is the sign. */
                panel?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["DotPlanRequest"];
                "image/svg+xml": string;
            };
        };
        responses: {
            /** @description The plan. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DotPlan"];
                    "text/csv": string;
                    "image/svg+xml": string;
                    "text/x-gcode": string;
                };
            };
            /** @description [The JSON cannot be read](/docs/problems/malformed-json); [The drawing cannot be read](/docs/problems/malformed-drawing); [The drawing declares entities that are not read](/docs/problems/entities-not-accepted) */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [No form of the answer suits the Accept header](/docs/problems/not-acceptable) */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The request is too large](/docs/problems/too-large) */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The media type of the body is not read](/docs/problems/unsupported-media-type) */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The description does not fit its schema](/docs/problems/invalid-description); [A query parameter cannot be used](/docs/problems/invalid-parameters); [The scale of the drawing is not known](/docs/problems/scale-unknown); [The drawing holds nothing that could be touched or read](/docs/problems/no-tactile-elements); [The drawing holds several signs](/docs/problems/several-signs); [The drawing is too complex](/docs/problems/too-complex) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The service is busy](/docs/problems/busy) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listStandards: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The standards. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StandardList"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [No form of the answer suits the Accept header](/docs/problems/not-acceptable) */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getStandard: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /**
                 * @description The id, optionally pinned to a revision.
                 * @example us-ada-2010
                 */
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The table. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StandardTable"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [No form of the answer suits the Accept header](/docs/problems/not-acceptable) */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getStandardChanges: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /**
                 * @description The id, optionally pinned to a revision.
                 * @example us-ada-2010
                 */
                id: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The changes. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StandardChanges"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [No form of the answer suits the Accept header](/docs/problems/not-acceptable) */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getCommonWindows: {
        parameters: {
            query: {
                /**
                 * @description Ids of standards parted by commas; `id@revision` pins one to a revision.
                 * @example us-ada-2010
                 */
                ids: string;
                /** @description What the sign is for. */
                use?: "permanent-room" | "exit-door" | "elevator-landing" | "elevator-car-control" | "directional" | "informational" | "parking" | "transit-station" | "symbol-of-accessibility" | "temporary" | "occupant-name" | "directory" | "gift";
                /** @description What the braille is made on, where a code tells its sizes by that. */
                carrier?: "paper" | "sticker" | "pvc" | "stainless-steel" | "other";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The windows. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CommonWindows"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [No form of the answer suits the Accept header](/docs/problems/not-acceptable) */
            406: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [A query parameter cannot be used](/docs/problems/invalid-parameters); [A standard is not known](/docs/problems/unknown-standard) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listSubmittals: {
        parameters: {
            query?: {
                limit?: number;
                /** @description `next` of the page before. */
                cursor?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SubmittalList"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [A query parameter cannot be used](/docs/problems/invalid-parameters) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    createSubmittal: {
        parameters: {
            query?: never;
            header?: {
                /** @description Names this request: sent again with the same key and the same body within 24 hours, it gets the same answer and creates nothing more. A quoted string of 1 to 255 characters (draft-ietf-httpapi-idempotency-key-header-07); without quotes it is taken as well. */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "multipart/form-data": components["schemas"]["UploadForm"];
                "application/json": components["schemas"]["SubmittalRequest"];
            };
        };
        responses: {
            /** @description The answer. */
            202: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Submittal"];
                };
            };
            /** @description [The JSON cannot be read](/docs/problems/malformed-json); [The request cannot be read](/docs/problems/malformed-request) */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The same request is still being answered](/docs/problems/request-in-progress) */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The request is too large](/docs/problems/too-large) */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The media type of the body is not read](/docs/problems/unsupported-media-type) */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The description does not fit its schema](/docs/problems/invalid-description); [The upload holds no sign that can be kept](/docs/problems/no-signs); [The drawing is too complex](/docs/problems/too-complex); [A standard is not known](/docs/problems/unknown-standard); [The Idempotency-Key belongs to another request](/docs/problems/idempotency-key-reused) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable); [There is no room left to keep this](/docs/problems/storage-full); [The service is busy](/docs/problems/busy) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listSigns: {
        parameters: {
            query?: {
                /** @description At most 100 with whole reports. */
                limit?: number;
                /** @description `next` of the page before. */
                cursor?: string;
                /** @description `brief`: what each report comes to, without its findings. */
                report?: "whole" | "brief";
                /** @description `none`: without a report. */
                verdict?: "pass" | "fail" | "undetermined" | "not-applicable" | "none";
                state?: "queued" | "done" | "cancelled";
                /** @description Part of a mark, a location or a door. */
                text?: string;
            };
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SubmittalSignList"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [A query parameter cannot be used](/docs/problems/invalid-parameters) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    addSigns: {
        parameters: {
            query?: never;
            header?: {
                /** @description Names this request: sent again with the same key and the same body within 24 hours, it gets the same answer and creates nothing more. A quoted string of 1 to 255 characters (draft-ietf-httpapi-idempotency-key-header-07); without quotes it is taken as well. */
                "Idempotency-Key"?: string;
            };
            path: {
                /** @description Id of the submittal. */
                submittal: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "multipart/form-data": components["schemas"]["UploadForm"];
                "application/json": components["schemas"]["SubmittalRequest"];
            };
        };
        responses: {
            /** @description The answer. */
            202: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Submittal"];
                };
            };
            /** @description [The JSON cannot be read](/docs/problems/malformed-json); [The request cannot be read](/docs/problems/malformed-request) */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is asked does not go with the state of the thing](/docs/problems/not-now); [The same request is still being answered](/docs/problems/request-in-progress) */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The request is too large](/docs/problems/too-large) */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The media type of the body is not read](/docs/problems/unsupported-media-type) */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The description does not fit its schema](/docs/problems/invalid-description); [The upload holds no sign that can be kept](/docs/problems/no-signs); [The drawing is too complex](/docs/problems/too-complex); [The Idempotency-Key belongs to another request](/docs/problems/idempotency-key-reused) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable); [There is no room left to keep this](/docs/problems/storage-full); [The service is busy](/docs/problems/busy) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getSubmittal: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Submittal"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    deleteSubmittal: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    cancelSubmittal: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Submittal"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is asked does not go with the state of the thing](/docs/problems/not-now) */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getHistory: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["History"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    watchSubmittal: {
        parameters: {
            query?: never;
            header?: {
                /** @description The last `id` that was read: what it told is not told again. */
                "Last-Event-ID"?: string;
            };
            path: {
                /** @description Id of the submittal. */
                submittal: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/event-stream": string;
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable); [The service is busy](/docs/problems/busy) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listWebhooks: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WebhookList"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    createWebhook: {
        parameters: {
            query?: never;
            header?: {
                /** @description Names this request: sent again with the same key and the same body within 24 hours, it gets the same answer and creates nothing more. A quoted string of 1 to 255 characters (draft-ietf-httpapi-idempotency-key-header-07); without quotes it is taken as well. */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WebhookRequest"];
            };
        };
        responses: {
            /** @description The answer. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["NewWebhook"];
                };
            };
            /** @description [The JSON cannot be read](/docs/problems/malformed-json); [The request cannot be read](/docs/problems/malformed-request) */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The organisation has as much as it may](/docs/problems/organisation-limit); [The same request is still being answered](/docs/problems/request-in-progress) */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The request is too large](/docs/problems/too-large) */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The media type of the body is not read](/docs/problems/unsupported-media-type) */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The description does not fit its schema](/docs/problems/invalid-description); [The Idempotency-Key belongs to another request](/docs/problems/idempotency-key-reused) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getWebhook: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Id of the address. */
                webhook: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WebhookWithDeliveries"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    deleteWebhook: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Id of the address. */
                webhook: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    rotateWebhookSecret: {
        parameters: {
            query?: never;
            header?: {
                /** @description Names this request: sent again with the same key and the same body within 24 hours, it gets the same answer and creates nothing more. A quoted string of 1 to 255 characters (draft-ietf-httpapi-idempotency-key-header-07); without quotes it is taken as well. */
                "Idempotency-Key"?: string;
            };
            path: {
                /** @description Id of the address. */
                webhook: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["NewWebhook"];
                };
            };
            /** @description [The request cannot be read](/docs/problems/malformed-request) */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The same request is still being answered](/docs/problems/request-in-progress) */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The Idempotency-Key belongs to another request](/docs/problems/idempotency-key-reused) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    testWebhook: {
        parameters: {
            query?: never;
            header?: {
                /** @description Names this request: sent again with the same key and the same body within 24 hours, it gets the same answer and creates nothing more. A quoted string of 1 to 255 characters (draft-ietf-httpapi-idempotency-key-header-07); without quotes it is taken as well. */
                "Idempotency-Key"?: string;
            };
            path: {
                /** @description Id of the address. */
                webhook: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            202: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WebhookDelivery"];
                };
            };
            /** @description [The request cannot be read](/docs/problems/malformed-request) */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is asked does not go with the state of the thing](/docs/problems/not-now); [The same request is still being answered](/docs/problems/request-in-progress) */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The Idempotency-Key belongs to another request](/docs/problems/idempotency-key-reused) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getSign: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
                /** @description Id of the sign. */
                sign: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["KeptSign"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    removeSign: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
                /** @description Id of the sign. */
                sign: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getSignReport: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
                /** @description Id of the sign. */
                sign: string;
                /** @description A revision of the sign. */
                revision: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Report"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    addMeasurements: {
        parameters: {
            query?: never;
            header?: {
                /** @description Names this request: sent again with the same key and the same body within 24 hours, it gets the same answer and creates nothing more. A quoted string of 1 to 255 characters (draft-ietf-httpapi-idempotency-key-header-07); without quotes it is taken as well. */
                "Idempotency-Key"?: string;
            };
            path: {
                /** @description Id of the submittal. */
                submittal: string;
                /** @description Id of the sign. */
                sign: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["MeasurementsRequest"];
            };
        };
        responses: {
            /** @description The answer. */
            202: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SignChange"];
                };
            };
            /** @description [The JSON cannot be read](/docs/problems/malformed-json); [The request cannot be read](/docs/problems/malformed-request) */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is asked does not go with the state of the thing](/docs/problems/not-now); [The same request is still being answered](/docs/problems/request-in-progress) */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The request is too large](/docs/problems/too-large) */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The media type of the body is not read](/docs/problems/unsupported-media-type) */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The description does not fit its schema](/docs/problems/invalid-description); [The Idempotency-Key belongs to another request](/docs/problems/idempotency-key-reused) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    setInstallation: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
                /** @description Id of the sign. */
                sign: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["InstallationRequest"];
            };
        };
        responses: {
            /** @description The answer. */
            202: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SignChange"];
                };
            };
            /** @description [The JSON cannot be read](/docs/problems/malformed-json) */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is asked does not go with the state of the thing](/docs/problems/not-now) */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The request is too large](/docs/problems/too-large) */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The media type of the body is not read](/docs/problems/unsupported-media-type) */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The description does not fit its schema](/docs/problems/invalid-description) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    addWaiver: {
        parameters: {
            query?: never;
            header?: {
                /** @description Names this request: sent again with the same key and the same body within 24 hours, it gets the same answer and creates nothing more. A quoted string of 1 to 255 characters (draft-ietf-httpapi-idempotency-key-header-07); without quotes it is taken as well. */
                "Idempotency-Key"?: string;
            };
            path: {
                /** @description Id of the submittal. */
                submittal: string;
                /** @description Id of the sign. */
                sign: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WaiverRequest"];
            };
        };
        responses: {
            /** @description The answer. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Waiver"];
                };
            };
            /** @description [The JSON cannot be read](/docs/problems/malformed-json); [The request cannot be read](/docs/problems/malformed-request) */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The same request is still being answered](/docs/problems/request-in-progress) */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The request is too large](/docs/problems/too-large) */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The media type of the body is not read](/docs/problems/unsupported-media-type) */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The description does not fit its schema](/docs/problems/invalid-description); [The Idempotency-Key belongs to another request](/docs/problems/idempotency-key-reused) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    withdrawWaiver: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
                /** @description Id of the sign. */
                sign: string;
                /** @description Id of the waiver. */
                waiver: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    addNote: {
        parameters: {
            query?: never;
            header?: {
                /** @description Names this request: sent again with the same key and the same body within 24 hours, it gets the same answer and creates nothing more. A quoted string of 1 to 255 characters (draft-ietf-httpapi-idempotency-key-header-07); without quotes it is taken as well. */
                "Idempotency-Key"?: string;
            };
            path: {
                /** @description Id of the submittal. */
                submittal: string;
                /** @description Id of the sign. */
                sign: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NoteRequest"];
            };
        };
        responses: {
            /** @description The answer. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Note"];
                };
            };
            /** @description [The JSON cannot be read](/docs/problems/malformed-json); [The request cannot be read](/docs/problems/malformed-request) */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The same request is still being answered](/docs/problems/request-in-progress) */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The request is too large](/docs/problems/too-large) */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The media type of the body is not read](/docs/problems/unsupported-media-type) */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The description does not fit its schema](/docs/problems/invalid-description); [The Idempotency-Key belongs to another request](/docs/problems/idempotency-key-reused) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getSetReportHtml: {
        parameters: {
            query?: {
                /** @description Signs that are left out at the beginning. */
                from?: number;
                /** @description Signs that follow; absent: all. */
                count?: number;
                /** @description Of JUnit XML: what an undecided finding counts as; absent: skipped. */
                undetermined?: "skipped" | "failure";
            };
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/html": unknown;
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The request is too large](/docs/problems/too-large) */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [A query parameter cannot be used](/docs/problems/invalid-parameters); [The drawing is too complex](/docs/problems/too-complex) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable); [The service is busy](/docs/problems/busy) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getSetReportPdf: {
        parameters: {
            query?: {
                /** @description Signs that are left out at the beginning. */
                from?: number;
                /** @description Signs that follow; absent: all. */
                count?: number;
                /** @description Of JUnit XML: what an undecided finding counts as; absent: skipped. */
                undetermined?: "skipped" | "failure";
            };
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": unknown;
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The request is too large](/docs/problems/too-large) */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [A query parameter cannot be used](/docs/problems/invalid-parameters); [The drawing is too complex](/docs/problems/too-complex) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable); [The service is busy](/docs/problems/busy) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getSetReportCsv: {
        parameters: {
            query?: {
                /** @description Signs that are left out at the beginning. */
                from?: number;
                /** @description Signs that follow; absent: all. */
                count?: number;
                /** @description Of JUnit XML: what an undecided finding counts as; absent: skipped. */
                undetermined?: "skipped" | "failure";
            };
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": unknown;
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The request is too large](/docs/problems/too-large) */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [A query parameter cannot be used](/docs/problems/invalid-parameters); [The drawing is too complex](/docs/problems/too-complex) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable); [The service is busy](/docs/problems/busy) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getSetScheduleCsv: {
        parameters: {
            query?: {
                /** @description Signs that are left out at the beginning. */
                from?: number;
                /** @description Signs that follow; absent: all. */
                count?: number;
                /** @description Of JUnit XML: what an undecided finding counts as; absent: skipped. */
                undetermined?: "skipped" | "failure";
            };
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": unknown;
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The request is too large](/docs/problems/too-large) */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [A query parameter cannot be used](/docs/problems/invalid-parameters); [The drawing is too complex](/docs/problems/too-complex) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable); [The service is busy](/docs/problems/busy) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getSetReportSarif: {
        parameters: {
            query?: {
                /** @description Signs that are left out at the beginning. */
                from?: number;
                /** @description Signs that follow; absent: all. */
                count?: number;
                /** @description Of JUnit XML: what an undecided finding counts as; absent: skipped. */
                undetermined?: "skipped" | "failure";
            };
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/sarif+json": unknown;
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The request is too large](/docs/problems/too-large) */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [A query parameter cannot be used](/docs/problems/invalid-parameters); [The drawing is too complex](/docs/problems/too-complex) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable); [The service is busy](/docs/problems/busy) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getSetReportXml: {
        parameters: {
            query?: {
                /** @description Signs that are left out at the beginning. */
                from?: number;
                /** @description Signs that follow; absent: all. */
                count?: number;
                /** @description Of JUnit XML: what an undecided finding counts as; absent: skipped. */
                undetermined?: "skipped" | "failure";
            };
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/xml": unknown;
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The request is too large](/docs/problems/too-large) */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [A query parameter cannot be used](/docs/problems/invalid-parameters); [The drawing is too complex](/docs/problems/too-complex) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable); [The service is busy](/docs/problems/busy) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getSetReportBcf: {
        parameters: {
            query?: {
                /** @description Signs that are left out at the beginning. */
                from?: number;
                /** @description Signs that follow; absent: all. */
                count?: number;
                /** @description Of JUnit XML: what an undecided finding counts as; absent: skipped. */
                undetermined?: "skipped" | "failure";
            };
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/octet-stream": unknown;
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The request is too large](/docs/problems/too-large) */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [A query parameter cannot be used](/docs/problems/invalid-parameters); [The drawing is too complex](/docs/problems/too-complex) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable); [The service is busy](/docs/problems/busy) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getSetInspectionHtml: {
        parameters: {
            query?: {
                /** @description Signs that are left out at the beginning. */
                from?: number;
                /** @description Signs that follow; absent: all. */
                count?: number;
                /** @description Of JUnit XML: what an undecided finding counts as; absent: skipped. */
                undetermined?: "skipped" | "failure";
            };
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/html": unknown;
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The request is too large](/docs/problems/too-large) */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [A query parameter cannot be used](/docs/problems/invalid-parameters); [The drawing is too complex](/docs/problems/too-complex) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable); [The service is busy](/docs/problems/busy) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getSetInspectionPdf: {
        parameters: {
            query?: {
                /** @description Signs that are left out at the beginning. */
                from?: number;
                /** @description Signs that follow; absent: all. */
                count?: number;
                /** @description Of JUnit XML: what an undecided finding counts as; absent: skipped. */
                undetermined?: "skipped" | "failure";
            };
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": unknown;
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The request is too large](/docs/problems/too-large) */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [A query parameter cannot be used](/docs/problems/invalid-parameters); [The drawing is too complex](/docs/problems/too-complex) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable); [The service is busy](/docs/problems/busy) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getSetEvidenceZip: {
        parameters: {
            query?: {
                /** @description Signs that are left out at the beginning. */
                from?: number;
                /** @description Signs that follow; absent: all. */
                count?: number;
                /** @description Of JUnit XML: what an undecided finding counts as; absent: skipped. */
                undetermined?: "skipped" | "failure";
            };
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/zip": unknown;
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The request is too large](/docs/problems/too-large) */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [A query parameter cannot be used](/docs/problems/invalid-parameters); [The drawing is too complex](/docs/problems/too-complex) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable); [The service is busy](/docs/problems/busy) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getSignReportHtml: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
                /** @description Id of the sign. */
                sign: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/html": unknown;
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The drawing is too complex](/docs/problems/too-complex) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable); [The service is busy](/docs/problems/busy) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getSignReportPdf: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
                /** @description Id of the sign. */
                sign: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": unknown;
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The drawing is too complex](/docs/problems/too-complex) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable); [The service is busy](/docs/problems/busy) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getSignInspectionHtml: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
                /** @description Id of the sign. */
                sign: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/html": unknown;
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The drawing is too complex](/docs/problems/too-complex) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable); [The service is busy](/docs/problems/busy) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getSignInspectionPdf: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
                /** @description Id of the sign. */
                sign: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": unknown;
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The drawing is too complex](/docs/problems/too-complex) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable); [The service is busy](/docs/problems/busy) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    getSignDrawing: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Id of the submittal. */
                submittal: string;
                /** @description Id of the sign. */
                sign: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "image/svg+xml": string;
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    listKeys: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["KeyList"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    createKey: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["KeyRequest"];
            };
        };
        responses: {
            /** @description The answer. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["NewKey"];
                };
            };
            /** @description [The JSON cannot be read](/docs/problems/malformed-json) */
            400: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The organisation has as much as it may](/docs/problems/organisation-limit) */
            409: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The request is too large](/docs/problems/too-large) */
            413: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The media type of the body is not read](/docs/problems/unsupported-media-type) */
            415: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The description does not fit its schema](/docs/problems/invalid-description) */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    revokeKey: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Id of the key. */
                key: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Done. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description [An API key is needed](/docs/problems/unauthorized) */
            401: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [The key does not allow this](/docs/problems/forbidden) */
            403: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [There is nothing at this address](/docs/problems/not-found) */
            404: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [Too many requests came](/docs/problems/too-many-requests) */
            429: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description [What is kept cannot be reached](/docs/problems/store-unavailable) */
            503: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
            /** @description Any other problem: a method that the path does not have (405), a fault of the service (500), more work than it can do (503). */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    onSubmittalChecked: {
        parameters: {
            query?: never;
            header: {
                /** @description Names the message; the same whenever it is sent again. */
                "webhook-id": string;
                /** @description Seconds since 1970-01-01 UTC at which this sending was signed. */
                "webhook-timestamp": string;
                /** @description Signatures by Standard Webhooks 1.0.0, parted by blanks, each behind `v1,`. */
                "webhook-signature": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SubmittalCheckedMessage"];
            };
        };
        responses: {
            /** @description Nothing more is to be sent to this address. */
            410: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description It was taken. */
            "2XX": {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description It was not taken; it is sent again, up to nine times within about three days. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
        };
    };
    onSubmittalCancelled: {
        parameters: {
            query?: never;
            header: {
                /** @description Names the message; the same whenever it is sent again. */
                "webhook-id": string;
                /** @description Seconds since 1970-01-01 UTC at which this sending was signed. */
                "webhook-timestamp": string;
                /** @description Signatures by Standard Webhooks 1.0.0, parted by blanks, each behind `v1,`. */
                "webhook-signature": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SubmittalCancelledMessage"];
            };
        };
        responses: {
            /** @description Nothing more is to be sent to this address. */
            410: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description It was taken. */
            "2XX": {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description It was not taken; it is sent again, up to nine times within about three days. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
        };
    };
    onEndpointTest: {
        parameters: {
            query?: never;
            header: {
                /** @description Names the message; the same whenever it is sent again. */
                "webhook-id": string;
                /** @description Seconds since 1970-01-01 UTC at which this sending was signed. */
                "webhook-timestamp": string;
                /** @description Signatures by Standard Webhooks 1.0.0, parted by blanks, each behind `v1,`. */
                "webhook-signature": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["EndpointTestMessage"];
            };
        };
        responses: {
            /** @description Nothing more is to be sent to this address. */
            410: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description It was taken. */
            "2XX": {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description It was not taken; it is sent again, up to nine times within about three days. */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
        };
    };
}
