/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The header alone is C99, and so are the beginnings of its requests. */
#include "threadcalc.h"

extern uint32_t sizes_of_requests(void);

uint32_t sizes_of_requests(void)
{
    const threadcalc_feed_request_t feed = THREADCALC_FEED_REQUEST_INIT;
    const threadcalc_tap_drill_request_t drill = THREADCALC_TAP_DRILL_REQUEST_INIT;
    const threadcalc_depth_request_t depth = THREADCALC_DEPTH_REQUEST_INIT;
    const threadcalc_taper_depth_request_t taper = THREADCALC_TAPER_DEPTH_REQUEST_INIT;
    const threadcalc_engagement_request_t engagement = THREADCALC_ENGAGEMENT_REQUEST_INIT;
    const threadcalc_motion_request_t motion = THREADCALC_MOTION_REQUEST_INIT;
    const threadcalc_blind_hole_t blind = THREADCALC_BLIND_HOLE_INIT;
    const threadcalc_through_hole_request_t through = THREADCALC_THROUGH_HOLE_REQUEST_INIT;
    const threadcalc_job_t job = THREADCALC_JOB_INIT;
    return feed.size + drill.size + depth.size + taper.size + engagement.size + motion.size
        + blind.size + through.size + job.size;
}
