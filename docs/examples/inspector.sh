#!/usr/bin/env bash
# An inspector's day with a set of signs: upload a zip of drawings and a sign schedule, wait for the reports, enter what a gauge
# read, let one finding stand on the authority's word, and fetch the evidence.
#
#   docs/examples/inspector.sh http://127.0.0.1:8080 signs.zip schedule.csv evidence/
#
# Needs curl and jq. Where the service asks for API keys, put one into FINGERTRUE_KEY (scopes check, read, write).
# The readings and the waiver are invented. A waiver is the authority's to give; this only keeps a record of it.
set -euo pipefail

base=$1 drawings=$2 schedule=$3 out=$4
mkdir -p "$out"

call() { # call METHOD PATH CURL-ARGUMENTS...
  local method=$1 path=$2; shift 2
  curl --silent --show-error --fail-with-body --request "$method" \
    ${FINGERTRUE_KEY:+--header "Authorization: Bearer $FINGERTRUE_KEY"} "$@" "$base$path"
}

echo "Upload"
# Sent again with the same key, this would be answered the same and keep nothing twice.
submittal=$(call POST /v1/submittals --header "Idempotency-Key: \"$(cat /proc/sys/kernel/random/uuid)\"" \
  --form "name=Pottery studio, first visit" --form "standards=us-ada-2010" \
  --form "files=@$drawings" --form "files=@$schedule")
id=$(jq -r .id <<<"$submittal")
jq -r '"  \(.id): \(.signs.total) signs", (.problems[] | "  not used: \(.detail)")' <<<"$submittal"

wait_until_done() { # the stream ends with the event "done"
  call GET "/v1/submittals/$id/events" --no-buffer --header "Accept: text/event-stream" |
    sed -n 's/^data: //p' | jq -r '"  \(.signs.done) of \(.signs.total) checked"'
}
echo "Progress"
wait_until_done

echo "Verdicts"
call GET "/v1/submittals/$id/signs?report=brief&limit=1000" >"$out/signs.json"
jq -r '.signs[] | "  \(.mark): \(.verdict // "no report: \(.problem.detail)")"' "$out/signs.json"
call GET "/v1/submittals/$id" | jq -r '.setFindings[] | "  set: \(.message)"'

echo "Dot heights, measured on the first sign with braille"
measured='[{ "quantity": "braille.dotHeight", "values": [0.71, 0.74, 0.69, 0.72, 0.70], "unit": "mm",
             "expandedUncertainty": 0.02, "instrument": "dial gauge" }]'
sign=$(jq -r 'first(.signs[] | select(.report != null)).id' "$out/signs.json")
call POST "/v1/submittals/$id/signs/$sign/measurements" --json "$measured" | jq -r '"  revision \(.revision) is \(.state)"'
wait_until_done
call GET "/v1/submittals/$id/signs/$sign" |
  jq -r '.report.findings[] | select(.quantity == "braille.dotHeight") | "  \(.verdict): \(.message)"'

echo "A finding that the authority lets stand"
sign=$(jq -r 'first(.signs[] | select(.verdict == "fail")).id // empty' "$out/signs.json")
if [ -n "$sign" ]; then
  fingerprint=$(call GET "/v1/submittals/$id/signs/$sign" |
    jq -r 'first(.report.findings[] | select(.verdict == "fail" and .force == "shall")).fingerprint')
  call POST "/v1/submittals/$id/signs/$sign/waivers" --json "$(jq -n --arg fingerprint "$fingerprint" \
    '{ $fingerprint, reason: "Replaced at the next refit.", author: "R. Ferrante", authority: "Variance 2026-118",
       expires: "2099-06-30" }')" | jq -r '"  \(.standing): \(.requirement)"'
else
  echo "  no sign fails"
fi

echo "Evidence"
call GET "/v1/submittals/$id/report.pdf" --output "$out/report.pdf"
call GET "/v1/submittals/$id/inspection.pdf" --output "$out/inspection.pdf"
call GET "/v1/submittals/$id/evidence.zip" --output "$out/evidence.zip"
call GET "/v1/submittals/$id/history" | jq -r '"  history: \(.events | length) events, intact: \(.intact), head \(.head)"'
echo "  in $out: $(ls "$out" | tr '\n' ' ')"
